package org.shelterwright.app.desk.search;

import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Icon;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitProgress;

/** The search strip below the view: one line until something is searched for. */
public final class SearchPart {
    private static final double HEIGHT = 196;
    private static final double MOST_HEIGHT = 240;

    /** From this width of the strip on there is room for the score over time (px). */
    private static final double WIDE = 560;

    /** The same beside the layouts that were found (px). */
    private static final double WIDE_WITH_CARDS = 900;

    private static final double LEFT = 186;
    private static final String PRIMARY = "primary";
    private static final double SCROLL = 12;

    private final Search search;
    private final Theme theme;
    private final Button order = new Button();
    private final CheckBox keepIdea = new CheckBox("Begin with what stands");
    private final Label seed = figure();
    private final Label tried = figure();
    private final Label lacks = figure();
    private final Label wishes = figure();
    private final ScoreCurve curve;
    private final OptionShelf cards;
    private final VBox middle = new VBox(2);
    private final Label words = new Label();
    private boolean wide = true;
    private final VBox orders = new VBox(6);
    private final ScrollPane shelf = new ScrollPane();
    private final VBox right = new VBox(2);
    private final HBox full = new HBox(22);
    private final VBox tall = new VBox(8);
    private final ScrollPane scroll = new ScrollPane(tall);
    private final Label title = new Label("Search");
    private final GridPane facts = new GridPane();
    private final HBox head = new HBox(8);
    private final HBox low = new HBox(16);
    private final StackPane node = new StackPane();
    private long nextSeed = 1;

    public SearchPart(Session session, Commands commands, Search search, Theme theme) {
        this.search = search;
        this.theme = theme;
        curve = new ScoreCurve(theme);
        cards = new OptionShelf(session, theme, this::adopt);
        keepIdea.setSelected(true);
        tried.setId("search-moves");
        build();
        new SearchCommands(search, this::start, this::adopt).addTo(commands);
        search.stand().addListener((observable, before, now) -> show(now));
        arrange(true);
        show(search.stand().get());
    }

    public Region node() {
        return node;
    }

    private List<FitOption> options() {
        return search.stand().get().options();
    }

    private void adopt(int index) {
        search.adopt(options().get(index), SearchCommands.LETTERS.get(index)).ifPresent(this::say);
    }

    private void say(String sentence) {
        words.setText(sentence);
        giveWay();
    }

    private void start() {
        search.start(keepIdea.isSelected(), nextSeed++);
    }

    private void turn() {
        if (search.stand().get().stopping()) {
            return;
        }
        if (search.stand().get().running()) {
            search.stop();
        } else {
            search.obstacle().ifPresentOrElse(this::say, this::start);
        }
    }

    private void build() {
        title.getStyleClass().add("title");
        order.setId("search-order");
        order.setOnAction(event -> turn());
        order.setMinWidth(Region.USE_PREF_SIZE);
        keepIdea.setMinWidth(Region.USE_PREF_SIZE);
        facts.setHgap(10);
        facts.setVgap(2);
        fact(facts, 0, "Seed", seed);
        fact(facts, 1, "Moves", tried);
        fact(facts, 2, "Lacking", lacks);
        fact(facts, 3, "Wishes", wishes);
        ScrollPane left = new ScrollPane(orders);
        left.setFitToWidth(true);
        left.setMinWidth(theme.sized(LEFT));
        theme.onChange(() -> left.setMinWidth(theme.sized(LEFT)));
        Label over = new Label("How good, over time");
        over.getStyleClass().add("second");
        VBox.setVgrow(curve, Priority.ALWAYS);
        middle.getChildren().setAll(over, curve);
        middle.setMinWidth(140);
        middle.setPrefWidth(190);
        Label offered = new Label("Truly different layouts");
        offered.getStyleClass().add("second");
        offered.setWrapText(true);
        Button away = new Button("Put away");
        away.getStyleClass().add("order");
        away.setId("search-put-away");
        away.setMinWidth(Region.USE_PREF_SIZE);
        away.setOnAction(event -> search.forget());
        away.visibleProperty().bind(keepIdea.disabledProperty().not());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        head.getChildren().setAll(offered, gap, away);
        head.setAlignment(Pos.CENTER_LEFT);
        words.setWrapText(true);
        words.getStyleClass().add("second");
        words.setId("search-words");
        shelf.setFitToWidth(true);
        shelf.setMinWidth(0);
        VBox.setVgrow(shelf, Priority.ALWAYS);
        right.setMinWidth(0);
        HBox.setHgrow(right, Priority.ALWAYS);
        scroll.setFitToWidth(true);
        full.getChildren().setAll(left, middle, right);
        full.setAlignment(Pos.TOP_LEFT);
        low.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(words, Priority.ALWAYS);
        node.setPadding(new Insets(10, 18, 8, 18));
        node.widthProperty().addListener((observable, before, now) -> {
            boolean roomy = now.doubleValue() > theme.sized(WIDE);
            if (roomy != wide) {
                wide = roomy;
                arrange(search.stand().get().idle());
            } else {
                giveWay();
            }
        });
        for (ScrollPane around : List.of(shelf, scroll)) {
            around.widthProperty().addListener((observable, before, now) -> {
                if (around.getScene() != null) {
                    cards.fit(now.doubleValue() - SCROLL);
                }
            });
        }
        words.managedProperty().bind(words.visibleProperty());
        theme.onChange(() -> arrange(search.stand().get().idle()));
    }

    /**
     * Before anything was searched for, the strip is one line, and the view has the room. A narrow strip holds all below each other, what
     * was found first.
     */
    private void arrange(boolean idle) {
        List.of(low, orders, right, tall).forEach(pane -> pane.getChildren().clear());
        shelf.setContent(null);
        words.maxWidthProperty().unbind();
        words.setMaxWidth(Double.MAX_VALUE);
        if (idle) {
            low.getChildren().setAll(order, keepIdea, words);
            node.getChildren().setAll(low);
            node.setPrefHeight(Region.USE_COMPUTED_SIZE);
        } else if (wide) {
            orders.getChildren().setAll(title, order, keepIdea, facts);
            shelf.setContent(found());
            right.getChildren().setAll(head, shelf);
            node.getChildren().setAll(full);
            node.setPrefHeight(high());
        } else {
            FlowPane line = new FlowPane(16, 6, order, keepIdea);
            line.setRowValignment(VPos.CENTER);
            tall.getChildren().setAll(line, head, cards, words, facts);
            node.getChildren().setAll(scroll);
            node.setPrefHeight(high());
        }
        giveWay();
    }

    /** The layouts that were found, and the words about them beside one, or below several. */
    private Pane found() {
        boolean beside = options().size() == 1;
        words.maxWidthProperty().unbind();
        words.maxWidthProperty()
                .bind(shelf.widthProperty().subtract(beside ? OptionCard.MOST_WIDTH + OptionCard.AROUND + 30 : 20));
        return beside ? new HBox(12, cards, words) : new VBox(4, cards, words);
    }

    /**
     * Where there is no room for all, the score gives way to the layouts that were found. Beside the orders in one line, the words are
     * shown only where they have room; they would make the strip high.
     */
    private void giveWay() {
        boolean line = node.getChildren().contains(low);
        words.setVisible(!words.getText().isEmpty() && (!line || wide));
        boolean roomy = node.getWidth() > theme.sized(options().isEmpty() ? WIDE : WIDE_WITH_CARDS);
        middle.setVisible(roomy);
        middle.setManaged(roomy);
    }

    /** Larger text makes the strip higher, but the view keeps its room; the rest scrolls. */
    private double high() {
        return Math.min(theme.sized(HEIGHT), MOST_HEIGHT);
    }

    private static Label figure() {
        Label label = new Label();
        label.getStyleClass().add("figure");
        return label;
    }

    private static void fact(GridPane facts, int row, String name, Label value) {
        Label label = new Label(name);
        label.getStyleClass().add("second");
        facts.addRow(row, label, value);
    }

    private void show(Stand stand) {
        if (stand.idle() != node.getChildren().contains(low)) {
            arrange(stand.idle());
        }
        order.setText(
                stand.stopping() ? "Checking the best" : stand.running() ? "Stop, keep the best" : "Search for places");
        order.setGraphic((stand.running() ? Icon.STOP : Icon.START).node(16));
        order.getStyleClass().remove(PRIMARY);
        if (!stand.stopping()) {
            order.getStyleClass().add(PRIMARY);
        }
        keepIdea.setDisable(stand.running());
        seed.setText(String.valueOf(stand.running() || stand.result() != null ? stand.seed() : nextSeed));
        List<FitProgress> steps = stand.steps();
        if (steps.isEmpty()) {
            tried.setText("–");
            lacks.setText("–");
            wishes.setText("–");
        } else {
            FitProgress last = steps.get(steps.size() - 1);
            tried.setText(Numerals.of(last.moves(), 0) + " of " + Numerals.of(Budget.USUAL_MOVES, 0));
            lacks.setText(Lacking.mm(last.best().hard() + last.best().medium()));
            wishes.setText(Lacking.mm(last.best().soft()));
        }
        curve.show(steps);
        say(stand.sentence());
        cards.show(options());
        if (!stand.idle() && wide) {
            shelf.setContent(found());
        }
        giveWay();
    }
}
