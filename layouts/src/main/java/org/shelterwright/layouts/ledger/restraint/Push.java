package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.LoadCase;

/**
 * One direction of one load case: the acceleration by which everything is pushed, safety factor included.
 *
 * <p>Sixteen directions along the floor are taken. Along the four axes they are those of the case; between, the push is the
 * point of the ellipse through its neighbours (own assumption: the standards give the axes alone).
 *
 * @param direction such as "45° left of forward"
 * @param gx forward, in multiples of standard gravity
 * @param gy to the left
 * @param gz up
 */
public record Push(LoadCase loadCase, String direction, double gx, double gy, double gz) {
    private static final int DIRECTIONS = 16;

    /** Every direction of every case that pushes at all. */
    static List<Push> of(List<LoadCase> cases) {
        List<Push> pushes = new ArrayList<>();
        for (LoadCase one : cases) {
            for (int i = 0; i < DIRECTIONS; i++) {
                addAlongFloor(one, i, pushes);
            }
            if (one.upG() > 0) {
                pushes.add(new Push(one, "up", 0, 0, one.upG() * one.factor()));
            }
            if (one.downG() > 0) {
                pushes.add(new Push(one, "down", 0, 0, -one.downG() * one.factor()));
            }
        }
        return List.copyOf(pushes);
    }

    private static void addAlongFloor(LoadCase one, int direction, List<Push> pushes) {
        double angle = 2 * Math.PI * direction / DIRECTIONS;
        double cosine = direction % 8 == 4 ? 0 : Math.cos(angle);
        double sine = direction % 8 == 0 ? 0 : Math.sin(angle);
        double gx = cosine * (cosine > 0 ? one.forwardG() * one.forwardFactor() : one.rearwardG() * one.factor());
        double gy = sine * one.sidewaysG() * one.factor();
        boolean oneAxis = one.sidewaysG() == 0 || one.forwardG() == 0 && one.rearwardG() == 0;
        if (gx == 0 && gy == 0 || oneAxis && direction % 4 != 0) {
            return;
        }
        String words = words(direction);
        pushes.add(new Push(one, words, gx, gy, -one.leastDownG()));
        if (one.mostDownG() > one.leastDownG()) {
            pushes.add(new Push(one, words + ", pressed down", gx, gy, -one.mostDownG()));
        }
    }

    private static String words(int direction) {
        int fromAhead = Math.min(direction, DIRECTIONS - direction);
        String side = direction < DIRECTIONS / 2 ? "left" : "right";
        if (fromAhead == 0) {
            return "forward";
        }
        if (fromAhead == 8) {
            return "rearward";
        }
        if (fromAhead == 4) {
            return "to the " + side;
        }
        return Amounts.number(22.5 * (fromAhead < 4 ? fromAhead : 8 - fromAhead), 1) + "° " + side + " of "
                + (fromAhead < 4 ? "forward" : "rearward");
    }

    /** Case and direction, such as "road (EN 12195-1), forward". */
    public String text() {
        return loadCase.name() + ", " + direction;
    }
}
