package org.shelterwright.layouts.asbuilt;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.source.Figures;

/**
 * The record of a work pack, as the tablet exports it.
 *
 * @param layout id of the layout
 * @param pack hash of the plan that the pack was made from
 * @param exported date and time, as the tablet has it
 */
public record AsBuiltRecord(String layout, String pack, String exported, List<Step> steps) {
    public static final JsonFormat<AsBuiltRecord> FORMAT =
            JsonFormat.of("shelterwright-as-built", 1, AsBuiltRecord.class);

    /** Largest figure that a person may have measured. */
    private static final double LARGEST = 1e6;

    /**
     * One step.
     *
     * @param unit id of the unit
     * @param joints hash of place and fixings for which it was recorded
     * @param signedBy who signed; {@code null} if not signed
     * @param signedAt when; {@code null} if not signed
     * @param wrench number of the torque wrench and until when it is calibrated; {@code null} if not stated
     * @param releasedBy second person at a hold point; {@code null} if none
     */
    public record Step(
            String unit,
            String joints,
            @Nullable String signedBy,
            @Nullable String signedAt,
            @Nullable String wrench,
            @Nullable String releasedBy,
            @Nullable String note,
            List<Check> checks) {
        public Step {
            checks = List.copyOf(checks);
        }
    }

    /**
     * One check.
     *
     * @param check id of the check in the plan
     * @param value what was measured, in the unit of the check; {@code null} if nothing was
     */
    public record Check(
            String check, boolean done, @Nullable Double value) {
        public Check {
            if (value != null) {
                Figures.within("measured value", value, -LARGEST, LARGEST);
            }
        }
    }

    public AsBuiltRecord {
        steps = List.copyOf(steps);
    }
}
