package org.shelterwright.layouts.ledger.cables;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.Fill;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.scene.Scene;

/** The limits of the subject cables. */
public final class CableLimits {
    private CableLimits() {}

    public static List<Limit> all() {
        return List.of(
                new Routed(),
                new PlugsFree(),
                new RunsClear(),
                new RouteLength(),
                new TrayFill(),
                new TrayClass(),
                new Separation(),
                new BendRadius(),
                new CurrentOfWire(),
                new DropOfWire(),
                new LineLoss(),
                new ConnectorFit(),
                new PanelPlaces());
    }

    /** Whether a straight along an axis passes through the inside of a solid; on its face it does not. */
    public static boolean passes(Point a, Point b, Box solid) {
        return RunsClear.depth(a, b, solid) > 0;
    }

    /** The shares of trays and ducts that cables may take, by the rules of a scene. */
    public static Fill fill(Scene scene) {
        return TrayFill.fill(scene);
    }
}
