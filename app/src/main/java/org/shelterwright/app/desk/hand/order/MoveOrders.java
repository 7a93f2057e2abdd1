package org.shelterwright.app.desk.hand.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntSupplier;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.hand.Moving;
import org.shelterwright.app.desk.hand.Turning;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.ledger.fit.MountFace;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Orders that move and turn what is selected. */
final class MoveOrders {
    private final Session session;
    private final IntSupplier step;

    /** @param step length of one step (µm) */
    MoveOrders(Session session, IntSupplier step) {
        this.session = session;
        this.step = step;
    }

    List<Command> all() {
        List<Command> all = new ArrayList<>();
        all.add(turn("turn-left", "Turn left", "T", QuarterTurn.R90));
        all.add(turn("turn-right", "Turn right", "Shift+T", QuarterTurn.R270));
        all.add(turn("turn-about", "Turn about", "Ctrl+T", QuarterTurn.R180));
        nudges("forward", "Up", Face.FRONT, all);
        nudges("to the rear", "Down", Face.REAR, all);
        nudges("to the left", "Left", Face.LEFT, all);
        nudges("to the right", "Right", Face.RIGHT, all);
        nudges("up", "Page Up", Face.TOP, all);
        nudges("down", "Page Down", Face.BOTTOM, all);
        return all;
    }

    private Command turn(String id, String name, String keys, QuarterTurn by) {
        return Change.command(
                session,
                id,
                name,
                List.of("rotate", "quarter"),
                List.of(keys),
                chosen -> Change.of(chosen, Turning.of(moving(chosen), by)));
    }

    private void nudges(String way, String key, Face face, List<Command> all) {
        String id = "move-" + face.name().toLowerCase(Locale.ROOT);
        all.add(nudge(id, "Move " + way, key, face, 10));
        all.add(nudge(id + "-far", "Move " + way + ", ten steps", "Shift+" + key, face, 100));
        all.add(nudge(id + "-fine", "Move " + way + ", a tenth of a step", "Alt+" + key, face, 1));
    }

    private Command nudge(String id, String name, String keys, Face face, int tenths) {
        return Change.command(session, id, name, List.of("nudge", "shift", "step"), List.of(keys), chosen -> {
            Moving moving = moving(chosen);
            requireFree(moving, face);
            int way = Math.multiplyExact(step.getAsInt(), tenths) / 10 * face.sign();
            return Change.of(chosen, moving.by("Move", Point.ORIGIN.with(face.axis(), way)));
        });
    }

    static Moving moving(Chosen chosen) {
        chosen.placed();
        return Moving.of(chosen.scene(), Set.copyOf(chosen.ids()), chosen.situation())
                .orElseThrow();
    }

    private static void requireFree(Moving moving, Face face) {
        for (PlacedUnit unit : moving.units()) {
            Surface surface = unit.place(moving.situation()).surface();
            Face mount = MountFace.of(unit.place(moving.situation()));
            if (mount.axis() == face.axis()) {
                String held = surface == Surface.WALL ? Wording.surface(mount) : Wording.surface(surface);
                throw new IllegalArgumentException(
                        unit.name() + " is mounted on " + held + " and moves along it only.");
            }
            if (unit.placement().pin().holds(face.axis())) {
                throw new IllegalArgumentException(
                        unit.name() + " is pinned along " + letter(face.axis()) + ". Unpin it first.");
            }
        }
    }

    static String letter(Axis axis) {
        return axis.name().toLowerCase(Locale.ROOT);
    }
}
