package org.shelterwright.app.desk.space;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.hand.Clearance;
import org.shelterwright.app.desk.hand.Grip;
import org.shelterwright.app.desk.hand.LengthText;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.catalog.space.Axis;

/**
 * A drag that goes on, with the keys that steer it: Shift moves freely, X, Y and Z hold to an axis, figures set the
 * distance to a neighbour, Tab goes to the next neighbour.
 */
final class Dragging {
    private static final String OF_LENGTHS = "0123456789.,+-/ mcinft'\"";

    private final Grip grip;
    private String typed = "";
    private @Nullable Side side;
    private @Nullable Axis only;

    /** One side of what is dragged: the same neighbour may come nearer or another take its place. */
    private record Side(Axis axis, boolean high) {
        static Side of(Clearance clearance) {
            return new Side(clearance.axis(), clearance.high());
        }
    }

    Dragging(Grip grip) {
        this.grip = grip;
    }

    void to(Ray ray, boolean freely) {
        grip.freely(freely);
        grip.to(ray);
    }

    void drop() {
        grip.drop();
    }

    void cancel() {
        grip.cancel();
    }

    List<Catch> catches() {
        return grip.catches();
    }

    /** The distances; in place of the one that is being typed, what was typed so far. */
    List<Clearance> clearances() {
        List<Clearance> shown = new ArrayList<>();
        for (Clearance one : grip.clearances()) {
            shown.add(Side.of(one).equals(side) ? one.saying(words(one)) : one);
        }
        return shown;
    }

    /** The bar says where figures go. */
    private String words(Clearance one) {
        return typed.isEmpty() ? one.words() + " |" : typed + "| to " + one.name();
    }

    /** Takes a key that was pressed; gives whether it steers a drag. */
    boolean pressed(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code == KeyCode.SHIFT) {
            grip.freely(true);
        } else if (code == KeyCode.BACK_SPACE && !typed.isEmpty()) {
            type(typed.substring(0, typed.length() - 1));
        } else if (code == KeyCode.ESCAPE && !typed.isEmpty()) {
            type("");
        } else if (code == KeyCode.TAB) {
            next();
        } else if (typed.isEmpty() && List.of(KeyCode.X, KeyCode.Y, KeyCode.Z).contains(code)) {
            only(Axis.valueOf(code.getName()));
        } else {
            return false;
        }
        return true;
    }

    void released(KeyEvent event) {
        if (event.getCode() == KeyCode.SHIFT) {
            grip.freely(false);
        }
    }

    /** Takes a character that was typed; gives whether it belongs to a length. */
    boolean typed(String character) {
        boolean begins = typed.isEmpty() && !(character.isBlank() || Character.isLetter(character.charAt(0)));
        if (!OF_LENGTHS.contains(character) || typed.isEmpty() && !begins) {
            return false;
        }
        if (side == null) {
            side = nearest().orElse(null);
        }
        type(typed + character);
        return true;
    }

    private void only(Axis axis) {
        if (grip.axes().contains(axis)) {
            only = axis == only ? null : axis;
            grip.only(only);
        }
    }

    private void next() {
        List<Side> sides = grip.clearances().stream().map(Side::of).toList();
        if (!sides.isEmpty()) {
            Side now = side == null ? nearest().orElse(sides.get(0)) : side;
            side = sides.get((sides.indexOf(now) + 1) % sides.size());
            type(typed);
        }
    }

    /** Moves there if what is typed is a length; until then it stays where it is. */
    private void type(String text) {
        typed = text;
        grip.release();
        if (text.isEmpty()) {
            side = null;
            return;
        }
        try {
            int length = LengthText.parse(text, LengthUnit.MILLIMETRE);
            grip.clearances().stream()
                    .filter(one -> Side.of(one).equals(side))
                    .findFirst()
                    .ifPresent(one -> grip.set(one, length));
        } catch (IllegalArgumentException unfinished) {
            grip.release();
        }
    }

    /** What it does not stand into comes first. */
    private Optional<Side> nearest() {
        return grip.clearances().stream()
                .min(Comparator.comparing((Clearance one) -> one.length() < 0)
                        .thenComparingInt(one -> Math.abs(one.length())))
                .map(Side::of);
    }
}
