package org.shelterwright.app.desk.transport;

import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.journey.JourneyIssue;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.solver.transport.PlanProgress;
import org.shelterwright.solver.transport.PlanResult;

/** The strip below the car: what its wheels and its floor bear, live, and the search for a load. */
final class LoadSearchPart {
    private static final double HEIGHT = 196;
    private static final double MOST_HEIGHT = 240;
    /** From this width of the strip on there is room for the bars, which the ledger has too (px). */
    private static final double WIDE = 600;

    private static final double CARD = 214;
    private static final double BAR = 178;
    private static final double GAP = 22;

    /** Between rows of bars (px): whole rows are in sight, rather than the half of one. */
    private static final double ROWS = 13;

    private static final double PICTURE = 62;

    private final JourneySession session;
    private final LoadSearch search;
    private final Commands commands;
    private final Theme theme;
    private final Button order = new Button();
    private final ProgressBar progress = new ProgressBar(0);
    private final Label tried = figure();
    private final Label broken = figure();
    private final Label use = figure();
    private final Label words = new Label();
    private final Label barsOf = new Label();
    private final TilePane bars = new TilePane(GAP, ROWS);
    private final VBox card = new VBox(4);
    private final HBox node;
    private List<Bar> drawn = List.of();
    private @Nullable PlanResult shown;

    LoadSearchPart(JourneySession session, LoadSearch search, Commands commands, Theme theme) {
        this.session = session;
        this.search = search;
        this.commands = commands;
        this.theme = theme;
        node = build();
        session.standing().addListener((observable, before, now) -> bars());
        session.focus().addListener((observable, before, now) -> bars());
        search.stand().addListener((observable, before, now) -> show(now));
        theme.onChange(() -> {
            drawn = List.of();
            shown = null;
            bars();
            show(search.stand().get());
        });
        bars();
        show(search.stand().get());
    }

    Region node() {
        return node;
    }

    private HBox build() {
        barsOf.getStyleClass().add("title");
        ScrollPane shelf = new ScrollPane(bars);
        shelf.setFitToWidth(true);
        shelf.setMinWidth(0);
        shelf.viewportBoundsProperty().addListener((observable, before, room) -> {
            double wide = room.getWidth();
            double columns = Math.max(1, Math.min(4, Math.floor((wide + GAP) / (theme.sized(BAR) + GAP))));
            bars.setPrefColumns((int) columns);
            bars.setPrefTileWidth(Math.max(60, (wide - GAP * (columns - 1)) / columns - 1));
        });
        VBox.setVgrow(shelf, Priority.ALWAYS);
        VBox left = new VBox(6, barsOf, shelf);
        left.setMinWidth(0);
        HBox.setHgrow(left, Priority.ALWAYS);
        Label title = new Label("Search");
        title.getStyleClass().add("title");
        order.getStyleClass().add("primary");
        order.setId("load-search-order");
        order.setOnAction(
                event -> commands.run(search.stand().get().running() ? "journey.search-stop" : "journey.search")
                        .ifPresent(words::setText));
        progress.setMaxWidth(Double.MAX_VALUE);
        progress.setPrefHeight(8);
        GridPane facts = new GridPane();
        facts.setHgap(10);
        facts.setVgap(2);
        facts.addRow(0, second("Plans tried"), tried);
        facts.addRow(1, second("Broken"), broken);
        facts.addRow(2, second("Greatest use"), use);
        VBox middle = new VBox(6, title, order, progress, facts);
        middle.setMinWidth(theme.sized(176));
        words.setWrapText(true);
        words.getStyleClass().add("second");
        words.setId("load-search-words");
        VBox right = new VBox(6, card, words);
        ScrollPane found = new ScrollPane(right);
        found.setFitToWidth(true);
        found.setMinWidth(theme.sized(CARD) + 34);
        found.setPrefWidth(theme.sized(CARD) + 34);
        HBox strip = new HBox(22, left, middle, found);
        strip.widthProperty().addListener((observable, before, now) -> {
            boolean wide = now.doubleValue() > theme.sized(WIDE);
            left.setVisible(wide);
            left.setManaged(wide);
            HBox.setHgrow(middle, wide ? Priority.NEVER : Priority.ALWAYS);
        });
        strip.setPadding(new Insets(10, 18, 8, 18));
        strip.setPrefHeight(Math.min(theme.sized(HEIGHT), MOST_HEIGHT));
        strip.setAlignment(Pos.TOP_LEFT);
        theme.onChange(() -> strip.setPrefHeight(Math.min(theme.sized(HEIGHT), MOST_HEIGHT)));
        return strip;
    }

    private void bars() {
        double closeShare = JourneyJudged.closeShare(session);
        List<Bar> now = session.load()
                .flatMap(load -> session.legLedger().map(ledger -> Bar.of(load, ledger, closeShare)))
                .orElse(List.of());
        barsOf.setText(
                session.load().map(load -> "What " + load.name() + " bears").orElse("No car goes on this leg"));
        if (now.equals(drawn)) {
            return;
        }
        boolean same = now.size() == drawn.size();
        drawn = now;
        for (int i = 0; same && i < now.size(); i++) {
            ((BarPane) bars.getChildren().get(i)).show(now.get(i));
        }
        if (!same) {
            bars.getChildren()
                    .setAll(now.stream()
                            .map(bar -> new BarPane(theme, bar, closeShare))
                            .toList());
        }
    }

    private void show(SearchStand stand) {
        order.setText(
                stand.stopping() ? "Checking the best" : stand.running() ? "Stop, keep the best" : "Search for a load");
        order.setGraphic((stand.running() ? Icon.STOP : Icon.START).node(16));
        order.setDisable(stand.stopping());
        PlanProgress step = stand.progress();
        progress.setVisible(stand.running());
        progress.setProgress(
                step == null ? ProgressBar.INDETERMINATE_PROGRESS : (double) step.tries() / Math.max(1, step.of()));
        tried.setText(step == null ? "–" : step.tries() + " of " + step.of());
        broken.setText(
                step == null
                        ? "–"
                        : step.best().broken() == 0
                                ? "none"
                                : String.valueOf(step.best().broken()));
        use.setText(step == null ? "–" : Numerals.of(step.best().use(), 2));
        words.setText(sentence(stand));
        if (shown != stand.result()) {
            shown = stand.result();
            card.getChildren().clear();
            if (shown != null) {
                card.getChildren().add(card(shown));
            }
        }
    }

    private Region card(PlanResult found) {
        Canvas picture = new Canvas(CARD, PICTURE);
        new ScreenCanvas(picture.getGraphicsContext2D(), new Worn(theme))
                .draw(LoadPicture.shapes(
                        found.scene(),
                        session.focus().get(),
                        CARD / ScreenCanvas.PIXELS,
                        PICTURE / ScreenCanvas.PIXELS));
        Ledger all = found.ledger().all();
        Label verdict = new Label(JourneyIssue.verdicts(all));
        verdict.getStyleClass().add("figure");
        verdict.setWrapText(true);
        verdict.setMinHeight(Region.USE_PREF_SIZE);
        Button take = new Button("Take over");
        take.setId("load-search-take");
        take.getStyleClass().add("order");
        take.setOnAction(event -> commands.run("journey.search-take").ifPresent(words::setText));
        HBox foot = new HBox(6, new Sign(theme, all.worst()), verdict);
        foot.setAlignment(Pos.CENTER_LEFT);
        VBox box = new VBox(4, picture, foot, take);
        box.getStyleClass().add("card");
        box.setPadding(new Insets(6, 8, 4, 8));
        box.setMaxWidth(CARD + 18);
        return box;
    }

    private static String sentence(SearchStand stand) {
        if (stand.failure() != null) {
            return stand.failure();
        }
        if (stand.running()) {
            return "What is found is shown here after a full check. Work can go on meanwhile.";
        }
        return stand.result() == null
                ? "Pinned pieces keep their places and what holds them; all else is placed and held anew. Nothing changes"
                        + " until a load is taken over."
                : "";
    }

    private static Label figure() {
        Label label = new Label();
        label.getStyleClass().add("figure");
        return label;
    }

    private static Label second(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("second");
        return label;
    }
}
