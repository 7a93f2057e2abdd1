package org.shelterwright.layouts.cable;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * One end of a wire: a port of a unit, or an entry panel.
 *
 * @param unit the unit; {@code null} at a panel
 * @param port its port; {@code null} at a panel
 * @param panel the panel; {@code null} at a port
 * @param outside whether the unit rides on the trailer
 * @param at on station, in the frame of the body; {@code null} if the unit is not placed or rides on the trailer
 * @param face the way that a cable leaves it, in the frame of the body
 */
public record WireEnd(
        @Nullable UnitSpec unit,
        @Nullable Port port,
        @Nullable EntryPanel panel,
        boolean outside,
        @Nullable Point at,
        @Nullable Face face) {
    private static final String BODY = "body";

    /** Finds an end as a brief writes it; empty if there is no such unit, port or panel. */
    public static Optional<WireEnd> of(Scene scene, String text) {
        int slash = text.indexOf('/');
        if (slash < 1) {
            return Optional.empty();
        }
        String owner = text.substring(0, slash);
        String name = text.substring(slash + 1);
        return owner.equals(BODY) ? panel(scene, name) : port(scene, owner, name);
    }

    /** The id of the unit that an end names; {@code body} for an entry panel. */
    public static String owner(String text) {
        return text.substring(0, Math.max(0, text.indexOf('/')));
    }

    /** What people call it, such as "Telemetry rack 1, power". */
    public String name() {
        if (panel != null) {
            return panel.name();
        }
        return (unit == null ? "" : unit.name()) + (port == null ? "" : ", " + port.name());
    }

    /** Where a cable enters by a panel: the middle of its area. */
    public static Point middle(EntryPanel panel) {
        return panel.area().centre();
    }

    private static Optional<WireEnd> panel(Scene scene, String name) {
        return scene.body().entryPanels().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .map(one -> new WireEnd(
                        null, null, one, false, middle(one), one.wall().opposite()));
    }

    private static Optional<WireEnd> port(Scene scene, String owner, String name) {
        PlacedUnit placed = scene.unit(owner).orElse(null);
        if (placed != null) {
            Pose pose = placed.pose(Situation.ON_STATION);
            return port(placed.item(), name)
                    .map(port -> new WireEnd(
                            placed.spec(),
                            port,
                            null,
                            false,
                            pose.apply(port.at(), placed.item().size()),
                            pose.apply(port.face())));
        }
        for (UnitSpec spec : scene.toPlace()) {
            if (spec.id().equals(owner)) {
                return port(scene.layout().item(spec), name)
                        .map(port -> new WireEnd(spec, port, null, false, null, null));
            }
        }
        Trailer trailer = scene.brief().trailer();
        if (trailer != null) {
            for (TrailerLoad load : trailer.loads()) {
                if (load.unit().id().equals(owner)) {
                    return port(scene.layout().item(load.unit()), name)
                            .map(port -> new WireEnd(load.unit(), port, null, true, null, null));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Port> port(Item item, String name) {
        return item.ports().stream().filter(one -> one.name().equals(name)).findFirst();
    }
}
