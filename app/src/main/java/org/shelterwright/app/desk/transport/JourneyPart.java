package org.shelterwright.app.desk.transport;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.desk.ask.Notes;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.file.OnFile;
import org.shelterwright.app.desk.ledger.LedgerColumn;
import org.shelterwright.app.desk.ledger.LedgerCommands;
import org.shelterwright.app.desk.ledger.Naming;
import org.shelterwright.app.desk.space.SpacePart;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.work.Work;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.solver.transport.JourneySearch;

/** The parts of the transport page. Its commands are added when it is made. */
public final class JourneyPart {
    /** What the orders of the frame mean on this page. */
    public static final Map<String, String> INSTEAD = instead();

    private static final Naming LEDGER =
            new Naming("journey.", " of the journey", "leg-ledger-list", "the whole leg", false);
    private static final double PIECE_SHARE = 0.5;

    private final JourneySession session;
    private final JourneyFileCommands files;
    private final LoadSearch search;
    private final VBox left;
    private final StackPane middle;
    private final Region strip;
    private final Region ledger;
    private final @Nullable CarSpace space;

    /**
     * Where long work is done; each has a thread of its own.
     *
     * @param asked what a person waits for: opening, documents
     * @param keeping saving, and keeping what is not saved
     * @param searching the search for a load
     */
    public record Works(Work asked, Work keeping, Work searching) {}

    /**
     * @param userFolder where unsaved work without a file is kept
     * @param notes where what needs no answer at once is told
     */
    public JourneyPart(
            Workshop workshop,
            Commands commands,
            Questions questions,
            Person person,
            Works works,
            Path userFolder,
            Theme theme,
            Notes notes) {
        JourneyChecker checker = JourneyChecker.standard();
        session = new JourneySession(checker);
        files = new JourneyFileCommands(
                workshop, session, questions, works.asked(), works.keeping(), userFolder, person, notes);
        files.addTo(commands);
        search = new LoadSearch(
                session,
                new JourneySearch(checker, workshop.loader()),
                works.searching(),
                workshop.version().number());
        new JourneyCommands(session, search).addTo(commands);
        space = SpacePart.supported() ? new CarSpace(session, theme) : null;
        if (space != null) {
            space.addTo(commands);
        }
        new LashByHand(session, questions).addTo(commands);
        StandPart stand = new StandPart(session, commands);
        Region legs = new LegList(session, theme).node();
        Region goes = new GoesList(session).node();
        legs.setMinHeight(Region.USE_PREF_SIZE);
        VBox.setVgrow(goes, Priority.ALWAYS);
        goes.setMinHeight(90);
        left = new VBox(legs, goes, stand.node());
        stand.node().maxHeightProperty().bind(left.heightProperty().multiply(PIECE_SHARE));
        strip = new LoadSearchPart(session, search, commands, theme).node();
        ledger = new LedgerColumn(
                        new JourneyJudged(session, this::savedRows), LEDGER, commands, questions, person, theme)
                .node();
        middle = new StackPane();
        session.standing().addListener((observable, before, now) -> {
            if ((before == null) != (now == null)) {
                fill(commands);
            }
        });
        fill(commands);
    }

    public JourneySession session() {
        return session;
    }

    public Region left() {
        return left;
    }

    public Region middle() {
        return middle;
    }

    public Region strip() {
        return strip;
    }

    public Region ledger() {
        return ledger;
    }

    /** Where a place of the car that is shown (µm) is seen, on the screen (px); outside of it where the display draws no 3D. */
    public Point2D onScreen(Point place) {
        return space == null ? new Point2D(-1, -1) : space.onScreen(place);
    }

    /** Every limit of the journey; empty as long as none is open. */
    public Optional<Ledger> rows() {
        return session.now().map(now -> now.ledger().all());
    }

    /** How the journey stands to its file; {@code null} as long as none is open. */
    public ObservableValue<@Nullable OnFile<JourneyWork>> file() {
        return files.state();
    }

    public int changesSinceSave() {
        return files.changesSinceSave();
    }

    /** Opens a journey by its name, after asking about what is unsaved. */
    public void open(String name) {
        files.open(name);
    }

    /** Looks whether another has changed the file of the journey. */
    public void look() {
        files.look();
    }

    /** Goes on once nothing unsaved is left that the person wants to keep. */
    public void whenSafe(Runnable then) {
        files.whenSafe(then);
    }

    /** Ends what goes on and lets go of the file. */
    public void close() {
        search.stop();
        files.close();
    }

    /** Where the facts of the status line come from. */
    public Map<String, String> facts() {
        return JourneyFacts.of(session);
    }

    private @Nullable Ledger savedRows() {
        OnFile<JourneyWork> file = files.state().get();
        LegScene leg = session.leg().orElse(null);
        return file == null || leg == null
                ? null
                : new Ledger(file.ledger().rows().stream()
                        .filter(row -> row.doesNotApply() || row.state().startsWith(leg.state()))
                        .toList());
    }

    private void fill(Commands commands) {
        boolean open = session.now().isPresent();
        // Without a journey there is nothing to say of legs, cars and limits.
        List.of(left, strip, ledger).forEach(part -> part.setVisible(open));
        strip.setManaged(open);
        middle.getChildren().setAll(open && space != null ? space.node() : nothing(commands, open));
    }

    private static Region nothing(Commands commands, boolean open) {
        Label title = new Label(open ? "This display draws no 3D" : "No journey is open");
        title.getStyleClass().add("title");
        Label sentence = new Label(
                open
                        ? "Every piece is in the list of what goes, where its place can be typed."
                        : "A journey has legs by road, rail, sea and air, and says what goes on which car, where on it, and how"
                                + " it is held.");
        sentence.getStyleClass().add("second");
        sentence.setWrapText(true);
        sentence.setMaxWidth(480);
        sentence.setTextAlignment(TextAlignment.CENTER);
        VBox box = new VBox(12, title, sentence);
        if (!open) {
            FlowPane orders = new FlowPane(8, 8, order(commands, "journey.open"), order(commands, "journey.sample"));
            orders.setAlignment(Pos.CENTER);
            box.getChildren().add(orders);
        }
        box.setAlignment(Pos.CENTER);
        return box;
    }

    private static Button order(Commands commands, String id) {
        Button button = new Button(commands.byId(id).map(Command::name).orElse(id));
        button.setId(id.replace('.', '-'));
        button.setOnAction(event -> commands.run(id));
        return button;
    }

    private static Map<String, String> instead() {
        Map<String, String> ids = new LinkedHashMap<>();
        for (String one : List.of("undo", "redo", "check")) {
            ids.put("edit." + one, "journey." + one);
        }
        for (String one : List.of("open", "save", "save-as", "documents")) {
            ids.put("file." + one, "journey." + one);
        }
        ids.put("desk.history", "journey.history");
        ids.put("search.start", "journey.search");
        ids.put("search.stop", "journey.search-stop");
        LedgerCommands.ids().forEach(one -> ids.put("ledger." + one, "journey." + one));
        Map<String, String> ways = Map.of("front", "forward", "rear", "rearward", "left", "left", "right", "right");
        ways.forEach((face, way) -> {
            ids.put("edit.move-" + face, "journey.nudge-" + way);
            ids.put("edit.move-" + face + "-far", "journey.nudge-" + way + "-far");
        });
        ids.put("edit.pin", "journey.pin");
        ids.put("edit.turn-left", "journey.turn");
        ids.put("edit.take-out", "journey.take-off");
        ids.putAll(CarViews.instead());
        return ids;
    }
}
