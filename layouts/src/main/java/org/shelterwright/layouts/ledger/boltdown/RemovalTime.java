package org.shelterwright.layouts.ledger.boltdown;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.handling.Carrying;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage;
import org.shelterwright.layouts.ways.Removal;
import org.shelterwright.layouts.ways.UnitWays;

/**
 * How long it takes to take units out: of each, its fixings undone, the ends of its wires taken off, and the way, with the times for
 * bringing in. Pieces stay in, parts stay on.
 */
final class RemovalTime {
    private final Scene scene;
    private final Carrying carrying;
    private final UnitWays ways;

    RemovalTime(Scene scene) {
        this.scene = scene;
        this.carrying = new Carrying(scene);
        this.ways = new UnitWays(scene);
    }

    /** Time to take out a unit and what must be out first (min); 0 if the rules set no times. */
    double minutes(Removal removal) {
        List<PlacedUnit> all = new ArrayList<>(removal.first());
        all.add(removal.unit());
        return all.stream().mapToDouble(this::minutes).sum();
    }

    private double minutes(PlacedUnit unit) {
        int fixings = PlacedFixing.of(unit, Situation.ON_STATION).size();
        long ends = CableNet.of(scene).wires().stream()
                .map(LaidWire::units)
                .filter(units -> units.contains(unit.id()))
                .count();
        Handling handling = carrying.of(unit, false).handling();
        boolean hoist = handling != null && handling.means() == Handling.Means.HOIST;
        Passage alone = ways.alone(unit);
        return figure(Figure.MINUTES_PER_FIXING) * fixings
                + figure(Figure.MINUTES_PER_CABLE_END) * ends
                + figure(Figure.MINUTES_IN)
                + (hoist ? figure(Figure.MINUTES_PER_HOIST) : 0)
                + figure(Figure.MINUTES_PER_METRE) * (alone.free() ? alone.length() * 1e-6 : 0);
    }

    private double figure(Figure figure) {
        return scene.rules().valueOr(figure, 0);
    }
}
