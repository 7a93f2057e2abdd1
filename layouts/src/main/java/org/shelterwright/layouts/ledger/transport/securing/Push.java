package org.shelterwright.layouts.ledger.transport.securing;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.Rules;

/**
 * One push of a load case on what stands on a car.
 *
 * @param toward the side that it pushes to
 * @param g along the floor, or up
 * @param downG the least push down with it
 * @param factor safety factor of friction by tie-downs
 */
public record Push(LoadCase loadCase, Face toward, double g, double downG, double factor) {
    /** All pushes of the load cases that apply. */
    public static List<Push> of(Rules rules, double tieDownFactor) {
        List<Push> pushes = new ArrayList<>();
        for (LoadCase one : rules.loadCases()) {
            add(pushes, one, Face.FRONT, one.forwardG(), Math.max(tieDownFactor, one.forwardFactor()));
            add(pushes, one, Face.REAR, one.rearwardG(), Math.max(tieDownFactor, one.factor()));
            add(pushes, one, Face.LEFT, one.sidewaysG(), Math.max(tieDownFactor, one.factor()));
            add(pushes, one, Face.RIGHT, one.sidewaysG(), Math.max(tieDownFactor, one.factor()));
            if (one.upG() > 0) {
                pushes.add(new Push(one, Face.TOP, one.upG(), 0, Math.max(tieDownFactor, one.factor())));
            }
        }
        return pushes;
    }

    private static void add(List<Push> pushes, LoadCase one, Face toward, double g, double factor) {
        if (g > 0) {
            pushes.add(new Push(one, toward, g, Math.max(0, one.leastDownG()), factor));
        }
    }

    /** Part of a direction along the floor that goes with this push: -1 to 1. */
    double along(double x, double y) {
        return switch (toward) {
            case FRONT -> x;
            case REAR -> -x;
            case LEFT -> y;
            case RIGHT -> -y;
            default -> 0;
        };
    }

    /** Such as "rail, combined transport, lengthways, 0.5 g forward". */
    public String text() {
        String way = switch (toward) {
            case FRONT -> "forward";
            case REAR -> "rearward";
            case LEFT -> "to the left";
            case RIGHT -> "to the right";
            default -> "up";
        };
        return loadCase.name() + ", " + Amounts.number(g, 2) + " g " + way;
    }
}
