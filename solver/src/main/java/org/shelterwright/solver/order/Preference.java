package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.ways.Passage;
import org.shelterwright.layouts.ways.UnitWays;

/**
 * What makes an order better than another: what is heavy, low and far in early; few changes of tool and of place; what is loose
 * last. The price of an order is the sum over its steps of urgency times place in the order, and of the changes from step to step.
 */
final class Preference {
    private static final double KG = 0.02;
    private static final double FAR = 0.6;
    private static final double LOW = 1.5;
    private static final double LOOSE = -6;
    private static final double TOOL = 0.5;
    private static final double PLACE = 0.35;

    private final double[] urgency;
    private final List<Point> centres = new ArrayList<>();
    private final List<Set<String>> tools = new ArrayList<>();

    Preference(UnitWays ways) {
        List<PlacedUnit> units = ways.scene().units();
        double height = ways.scene().body().inside().z();
        urgency = new double[units.size()];
        for (PlacedUnit unit : units) {
            Box outline = unit.outline(Situation.ON_STATION);
            centres.add(outline.centre());
            Set<String> threads = new HashSet<>();
            unit.item().fixings().stream().map(Fixing::thread).forEach(threads::add);
            tools.add(threads);
            Double kg = unit.item().mass().massKg();
            Passage alone = ways.alone(unit);
            Place place = unit.place(Situation.ON_STATION);
            urgency[unit.index()] = KG * (kg == null ? 0 : kg)
                    + FAR * (alone.free() ? alone.length() * 1e-6 : 0)
                    + LOW * (1 - outline.z0() / height)
                    + (unit.item().mounting().loose() ? LOOSE : 0)
                    - (place.host() == null ? 0 : 1);
        }
    }

    /**
     * Price of a unit at a place of the order.
     *
     * @param place from 1
     * @param next the unit after it; -1 if it is the last
     */
    double price(int unit, int place, int next) {
        double price = urgency[unit] * place / urgency.length;
        if (next >= 0) {
            price += PLACE * distance(unit, next);
            if (!tools.get(unit).isEmpty()
                    && !tools.get(next).isEmpty()
                    && !tools.get(unit).equals(tools.get(next))) {
                price += TOOL;
            }
        }
        return price;
    }

    private double distance(int a, int b) {
        Point p = centres.get(a);
        Point q = centres.get(b);
        return Math.hypot(p.x() - q.x(), p.y() - q.y()) * 1e-6;
    }
}
