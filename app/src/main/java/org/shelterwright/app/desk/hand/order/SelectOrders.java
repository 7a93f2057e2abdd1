package org.shelterwright.app.desk.hand.order;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.brief.UnitSpec;

/** Orders that select units, and that choose the situation that is shown. */
final class SelectOrders {
    private final Session session;

    SelectOrders(Session session) {
        this.session = session;
    }

    List<Command> all() {
        return List.of(
                new Command(
                        "select.all",
                        "Select all placed units",
                        List.of("everything"),
                        List.of("Ctrl+A"),
                        Optional::empty,
                        () -> session.selection()
                                .set(session.now().layout().placements().keySet())),
                new Command(
                        "select.none",
                        "Select nothing",
                        List.of("clear", "deselect"),
                        List.of("Ctrl+Shift+A"),
                        () -> session.selection().units().get().isEmpty()
                                ? Optional.of("Nothing is selected.")
                                : Optional.empty(),
                        () -> session.selection().clear()),
                new Command(
                        "select.same-item",
                        "Select all units of the same item",
                        List.of("like", "kind"),
                        List.of("Ctrl+Shift+E"),
                        () -> session.selection().units().get().isEmpty()
                                ? Optional.of("Nothing is selected. Select a unit first.")
                                : Optional.empty(),
                        this::sameItem),
                show(Situation.ON_STATION, "Show the layout on station", "S"),
                show(Situation.ON_THE_ROAD, "Show the layout on the road", "Shift+S"));
    }

    private Command show(Situation situation, String name, String key) {
        return new Command(
                "show." + (situation == Situation.ON_STATION ? "station" : "road"),
                name,
                List.of("state", "situation", "stowed"),
                List.of(key),
                () -> session.situation().get() == situation ? Optional.of("It is shown so.") : Optional.empty(),
                () -> session.situation().set(situation));
    }

    private void sameItem() {
        List<UnitSpec> units = session.now().layout().brief().units();
        Set<String> chosen = session.selection().units().get();
        Set<String> items = units.stream()
                .filter(unit -> chosen.contains(unit.id()))
                .map(UnitSpec::item)
                .collect(Collectors.toSet());
        session.selection()
                .set(units.stream()
                        .filter(unit -> items.contains(unit.item()))
                        .map(UnitSpec::id)
                        .toList());
    }
}
