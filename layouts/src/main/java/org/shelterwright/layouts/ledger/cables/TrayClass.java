package org.shelterwright.layouts.ledger.cables;

import java.util.List;
import org.shelterwright.catalog.body.Compartment;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape.Stretch;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.scene.Scene;

/**
 * In each tray, or compartment beside a separator, lie only cables of the classes that it is for.
 *
 * <p>Source: the body.
 */
final class TrayClass extends CableLimit {
    TrayClass() {
        super("cables.class", "Class of tray", Severity.MEDIUM, Source.stated("Body", "classes of its trays"));
    }

    @Override
    void assess(Scene scene, CableNet net, Rows rows) {
        boolean any = false;
        boolean right = true;
        for (LaidWire wire : net.wires()) {
            Cable cable = wire.cable();
            if (!wire.routed() || wire.shape() == null || cable == null) {
                continue;
            }
            any = true;
            for (Stretch stretch : wire.shape().stretches()) {
                Compartment part = stretch.tray().tray().parts().get(stretch.part());
                if (!part.classes().contains(cable.cableClass())) {
                    right = false;
                    rows.add(rows.draft(this, title() + ", " + wire.wire().id())
                            .units(wire.units())
                            .place(wire.place())
                            .mend("Route it by a tray for " + word(cable.cableClass())
                                    + ", or put a separator into this one.")
                            .atMost(
                                    1,
                                    0,
                                    "",
                                    wire.name() + " is a " + word(cable.cableClass()) + " cable and lies in the "
                                            + stretch.tray().tray().name() + ", which is for "
                                            + words(part.classes()) + "."));
                    break;
                }
            }
        }
        if (!any) {
            rows.add(rows.draft(this).notAssessed("No wire has a route that could be judged. Route the wires first."));
        } else if (right) {
            rows.add(rows.draft(this).held("Every cable lies in trays of its class."));
        }
    }

    /** A class in words, such as "radio-frequency". */
    static String word(CableClass of) {
        return switch (of) {
            case POWER -> "power";
            case SIGNAL -> "signal";
            case RADIO_FREQUENCY -> "radio-frequency";
            case FIBRE -> "fibre";
            case EARTH -> "earth";
        };
    }

    private static String words(List<CableClass> classes) {
        return classes.isEmpty()
                ? "none"
                : String.join(", ", classes.stream().map(TrayClass::word).toList());
    }
}
