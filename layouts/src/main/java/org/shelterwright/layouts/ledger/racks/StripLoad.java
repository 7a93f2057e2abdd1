package org.shelterwright.layouts.ledger.racks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.rack.PowerStrip;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * No strip of sockets bears more current than it may, nor has fewer sockets than plugs: Σ P/(λ U) ≤ I, pieces at full use.
 *
 * <p>Source: the rating of the strip in the catalog; IEC 60364 (from memory).
 */
final class StripLoad extends BayLimit {
    StripLoad() {
        super("racks.strip", "Power strip", Severity.HARD, Source.stated("Catalog", "rating and sockets of the strip"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        Plugged plugged = Plugged.of(bay);
        if (!plugged.unknown().isEmpty()) {
            rows.add(draft(rows, bay)
                    .mend("Name its strip in the inventory, or give the bay such a strip.")
                    .notAssessed("Which strip of " + bay.name() + " feeds " + Wording.list(plugged.unknown())
                            + " is not stated."));
        }
        double otherFactor = scene.rules().valueOr(Figure.POWER_FACTOR, 0);
        for (PowerStrip strip : bay.bay().strips()) {
            List<InRack> pieces = plugged.pieces().getOrDefault(strip.name(), List.of());
            if (!pieces.isEmpty()) {
                strip(bay, strip, pieces, otherFactor, rows);
            }
        }
        if (plugged.unknown().isEmpty() && plugged.pieces().values().stream().allMatch(List::isEmpty)) {
            rows.add(draft(rows, bay).held("No piece in " + bay.name() + " draws power."));
        }
    }

    private void strip(FilledBay bay, PowerStrip strip, List<InRack> pieces, double otherFactor, Rows rows) {
        String name = strip.name() + " of " + bay.name();
        RowDraft draft =
                rows.draft(this, bay.titled(title() + ", " + strip.name())).units(bay.unit());
        List<String> unknown = new ArrayList<>();
        double sum = 0;
        for (InRack piece : pieces) {
            OptionalDouble amps = Plugged.currentA(piece, otherFactor);
            sum += amps.orElse(0);
            if (amps.isEmpty()) {
                unknown.add(piece.name());
            }
        }
        if (!unknown.isEmpty()) {
            rows.add(missing(draft, "current", unknown));
            return;
        }
        rows.add(draft.mend("Plug a piece into another strip.")
                .atMost(
                        sum,
                        strip.ratingA(),
                        "A",
                        "The " + name + " bears " + Amounts.number(sum, 1) + " A of "
                                + Amounts.number(strip.ratingA(), 1) + " A."));
        rows.add(rows.draft(this, "Sockets, " + name)
                .units(bay.unit())
                .mend("Plug a piece into another strip.")
                .countedAtLeast(
                        pieces.size(),
                        strip.sockets(),
                        "sockets",
                        Wording.count(pieces.size(), "piece") + " plug into the " + strip.sockets() + " sockets of the "
                                + name + "."));
    }
}
