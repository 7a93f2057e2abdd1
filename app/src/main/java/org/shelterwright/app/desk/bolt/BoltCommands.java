package org.shelterwright.app.desk.bolt;

import java.util.List;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;

/** What can be done on the bolt-down page. */
final class BoltCommands {
    private final BoltDesk desk;
    private final Player player;
    private final IntSupplier fitters;

    BoltCommands(BoltDesk desk, Player player, IntSupplier fitters) {
        this.desk = desk;
        this.player = player;
        this.fitters = fitters;
    }

    void addTo(Commands commands) {
        commands.add(command("find", "Find a bolt-down order", "Ctrl+F7", desk::obstacle, () -> {
            player.stop();
            desk.find(fitters.getAsInt());
        }));
        commands.add(command("next", "Next step", "Ctrl+Page Down", this::noSteps, () -> desk.go(next())));
        commands.add(command("previous", "Step before", "Ctrl+Page Up", this::noSteps, () -> desk.go(before())));
        commands.add(command("play", "Show how everything comes in, or stop", "Ctrl+F5", this::noSteps, player::turn));
        commands.add(command(
                "earlier",
                "Bring this step in earlier",
                "Ctrl+Alt+Page Up",
                () -> fixed(-1),
                () -> desk.move(desk.number(), -1)));
        commands.add(command(
                "later",
                "Bring this step in later",
                "Ctrl+Alt+Page Down",
                () -> fixed(1),
                () -> desk.move(desk.number(), 1)));
    }

    private int next() {
        return (int) Math.floor(desk.at().get()) + 1;
    }

    private int before() {
        return (int) Math.ceil(desk.at().get()) - 1;
    }

    private Optional<String> noSteps() {
        return desk.stand().get().steps() == 0
                ? Optional.of("There are no steps yet. Turn to the page Bolt-down and find an order.")
                : Optional.empty();
    }

    private Optional<String> fixed(int by) {
        Optional<String> none = noSteps().or(desk::obstacle);
        if (none.isPresent()) {
            return none;
        }
        int other = desk.number() + by;
        return other < 1 || other > desk.stand().get().steps()
                ? Optional.of(by < 0 ? "It is the first step already." : "It is the last step already.")
                : Optional.empty();
    }

    private static Command command(
            String id, String name, String keys, Supplier<Optional<String>> obstacle, Runnable action) {
        return new Command(
                "bolt." + id, name, List.of("bolt-down", "assemble", "order"), List.of(keys), obstacle, action);
    }
}
