package org.shelterwright.app.desk.inside;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.inside.InRack;

/** What can be done inside a unit, for the list of commands. */
final class InsideCommands {
    /** Opens the selected unit. */
    private static final String OPEN = "inside.open";

    private final InsideDesk desk;
    private final InsideOrders orders;
    private final Runnable takeFocus;

    InsideCommands(InsideDesk desk, InsideOrders orders, Runnable takeFocus) {
        this.desk = desk;
        this.orders = orders;
        this.takeFocus = takeFocus;
    }

    void addTo(Commands commands) {
        commands.add(new Command(
                OPEN,
                "Open the inside of the selected unit",
                List.of("rack", "locker", "drawer", "bay", "stowage", "piece"),
                List.of("E"),
                desk::obstacle,
                () -> {
                    desk.openSelected();
                    takeFocus.run();
                }));
        commands.add(new Command(
                "inside.close",
                "Back from the inside to the view",
                List.of("rack", "close"),
                List.of(),
                () -> desk.opened().get() == null ? Optional.of("Nothing is open.") : Optional.empty(),
                desk::close));
        commands.add(order("up", "Move the piece up one height unit", this::racked, () -> move(1)));
        commands.add(order("down", "Move the piece down one height unit", this::racked, () -> move(-1)));
        commands.add(order("turn", "Lay the piece another way", this::loose, orders::turn));
        commands.add(order("keep", "Keep the piece where it is, or let it go", orders::obstacle, orders::keepOrLetGo));
        commands.add(order("take-out", "Take the piece out of the unit", orders::obstacle, orders::takeOut));
    }

    private Optional<String> racked() {
        return orders.obstacle()
                .or(() -> orders.chosen().filter(InRack.class::isInstance).isPresent()
                        ? Optional.empty()
                        : Optional.of("A loose piece has no height units."));
    }

    private Optional<String> loose() {
        return orders.obstacle()
                .or(() -> orders.chosen().filter(InPlace.class::isInstance).isPresent()
                        ? Optional.empty()
                        : Optional.of("A rack-mounted piece lies as it is."));
    }

    private void move(int by) {
        orders.chosen()
                .filter(InRack.class::isInstance)
                .map(InRack.class::cast)
                .ifPresent(piece -> orders.toUnit(piece.lowest() + by));
    }

    private static Command order(String id, String name, Supplier<Optional<String>> obstacle, Runnable action) {
        return new Command("inside." + id, name, List.of("piece", "rack", "locker"), List.of(), obstacle, action);
    }
}
