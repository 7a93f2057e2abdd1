package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.edit.LetGo;
import org.shelterwright.solver.transport.JourneyPlanner;

/** What can be done with a journey by hand and by search. */
final class JourneyCommands {
    private static final int STEP = 10_000;

    private final JourneySession session;
    private final LoadSearch search;
    private final StandSheet sheet;
    private long seed = 1;

    JourneyCommands(JourneySession session, LoadSearch search) {
        this.session = session;
        this.search = search;
        this.sheet = new StandSheet(session);
    }

    void addTo(Commands commands) {
        add(commands, "undo", "Undo in the journey", () -> history(true), session::undo);
        add(commands, "redo", "Do again in the journey", () -> history(false), session::redo);
        add(commands, "check", "Check every limit of the journey again", this::none, session::checkAgain);
        add(commands, "search", "Search for a load", search::obstacle, () -> search.start(seed++));
        add(
                commands,
                "search-stop",
                "Stop the search for a load and keep the best",
                () -> search.stand().get().running() ? Optional.empty() : Optional.of("No search is going on."),
                search::stop);
        add(commands, "search-take", "Take over the load found", search::nothing, () -> said(search.take()));
        add(
                commands,
                "pin",
                "Pin or unpin the piece on its car",
                this::unchosen,
                () -> said(sheet.pin(!sheet.pinned())));
        add(commands, "turn", "Turn the piece on its car", this::unplaced, () -> said(sheet.turn()));
        add(commands, "take-off", "Take the piece off its car", this::unchosen, () -> said(sheet.takeOff()));
        add(commands, "propose", "Propose what holds the load", this::noLoad, this::propose);
        add(
                commands,
                "let-go",
                "Take off what holds the selected pieces, or all on the car",
                this::noLoad,
                this::letGo);
        add(commands, "next-leg", "Next leg", this::none, () -> leg(1));
        add(commands, "previous-leg", "Leg before", this::none, () -> leg(-1));
        add(commands, "next-car", "Next car of the leg", this::noLoad, this::nextCar);
        nudge(commands, "forward", "Move the piece forward", Axis.X, 1);
        nudge(commands, "rearward", "Move the piece rearward", Axis.X, -1);
        nudge(commands, "left", "Move the piece to the left", Axis.Y, 1);
        nudge(commands, "right", "Move the piece to the right", Axis.Y, -1);
    }

    private void nudge(Commands commands, String id, String name, Axis axis, int sign) {
        add(commands, "nudge-" + id, name, this::unplaced, () -> said(sheet.nudge(axis, sign * STEP)));
        add(
                commands,
                "nudge-" + id + "-far",
                name + " ten steps",
                this::unplaced,
                () -> said(sheet.nudge(axis, sign * 10 * STEP)));
    }

    /** Refusals of what no obstacle foresaw come out as they do of every command: as a sentence in the status line. */
    private static void said(Optional<String> refused) {
        refused.ifPresent(sentence -> {
            throw new IllegalArgumentException(sentence);
        });
    }

    private Optional<String> none() {
        return session.now().isPresent()
                ? Optional.empty()
                : Optional.of("No journey is open. Open one, or the sample Road-Rail Move.");
    }

    private Optional<String> noLoad() {
        return none().or(() -> session.load().isPresent()
                ? Optional.empty()
                : Optional.of("No car goes on this leg. Choose another leg."));
    }

    private Optional<String> unchosen() {
        return none().or(() ->
                sheet.chosen().isPresent() ? Optional.empty() : Optional.of("Select a piece on its car first."));
    }

    private Optional<String> unplaced() {
        return none().or(() -> sheet.placed().isPresent()
                ? Optional.empty()
                : Optional.of("Select a piece that stands on this car first."));
    }

    private Optional<String> history(boolean undo) {
        return none().or(() -> session.now()
                .filter(now -> undo ? now.history().canUndo() : now.history().canRedo())
                .map(now -> Optional.<String>empty())
                .orElse(Optional.of(undo ? "Nothing was changed yet." : "Nothing was undone.")));
    }

    private void propose() {
        JourneyStanding now = session.now().orElseThrow();
        Load load = session.load().orElseThrow().load();
        Load held = JourneyPlanner.held(now.scene(), load.id());
        if (held.equals(load)) {
            throw new IllegalArgumentException("Everything on " + load.name()
                    + " is held already. Take off what holds a piece to have it proposed anew.");
        }
        session.apply("Propose what holds " + load.id(), now.journey().with(held));
    }

    private void letGo() {
        Focus focus = session.focus().get();
        Load load = session.load().orElseThrow().load();
        List<String> chosen = focus == null
                ? List.of()
                : focus.pieces().stream()
                        .filter(id -> load.stand(id).isPresent())
                        .toList();
        session.apply(new LetGo(load.id(), chosen));
    }

    private void leg(int by) {
        session.now()
                .ifPresent(now -> session.look(focus -> focus.onLeg(
                        Math.floorMod(focus.leg() - 1 + by, now.scene().legs().size()) + 1, now.scene())));
    }

    private void nextCar() {
        session.leg()
                .ifPresent(leg -> session.now()
                        .ifPresent(now -> session.look(focus -> {
                            List<String> ids = new ArrayList<>();
                            leg.loads().forEach(load -> ids.add(load.id()));
                            int at = ids.indexOf(String.valueOf(focus.load()));
                            return focus.onLoad(ids.get((at + 1) % ids.size()), now.scene());
                        })));
    }

    private static void add(
            Commands commands, String id, String name, Supplier<Optional<String>> obstacle, Runnable action) {
        commands.add(new Command(
                "journey." + id, name, List.of("transport", "journey", "load"), List.of(), obstacle, action));
    }
}
