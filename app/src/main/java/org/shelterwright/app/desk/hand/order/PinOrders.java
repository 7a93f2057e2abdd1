package org.shelterwright.app.desk.hand.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.edit.PinUnit;
import org.shelterwright.layouts.layout.Pin;

/** Orders that pin what is selected: wholly, one axis, or its turn. Done again, they take the pin out. */
final class PinOrders {
    private final Session session;

    PinOrders(Session session) {
        this.session = session;
    }

    List<Command> all() {
        List<Command> all = new ArrayList<>();
        all.add(order("pin", "Pin, or take the pin out", "P", "", Pin::whole, pin -> Pin.ALL, pin -> Pin.NONE));
        for (Axis axis : Axis.values()) {
            String letter = MoveOrders.letter(axis);
            all.add(order(
                    "pin-" + letter,
                    "Pin along " + letter + ", or take that pin out",
                    letter.toUpperCase(Locale.ROOT),
                    " along " + letter,
                    pin -> pin.holds(axis),
                    pin -> pin.with(axis, true),
                    pin -> pin.with(axis, false)));
        }
        all.add(order(
                "pin-turn",
                "Pin the turn, or take that pin out",
                "Shift+P",
                " in its turn",
                Pin::turn,
                pin -> new Pin(pin.x(), pin.y(), pin.z(), true),
                pin -> new Pin(pin.x(), pin.y(), pin.z(), false)));
        return all;
    }

    private Command order(
            String id,
            String name,
            String key,
            String how,
            Predicate<Pin> pinned,
            UnaryOperator<Pin> pin,
            UnaryOperator<Pin> unpin) {
        return Change.command(session, id, name, List.of("hold", "fix", "search"), List.of(key), chosen -> {
            boolean all = chosen.placed().stream()
                    .allMatch(unit -> pinned.test(unit.placement().pin()));
            UnaryOperator<Pin> changed = all ? unpin : pin;
            List<PinUnit> edits = chosen.placed().stream()
                    .map(unit -> new PinUnit(
                            unit.id(), changed.apply(unit.placement().pin())))
                    .toList();
            return Change.of(chosen, (all ? "Unpin " : "Pin ") + chosen.words() + how, edits);
        });
    }
}
