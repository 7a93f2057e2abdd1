package org.shelterwright.app.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.study.results.Measure;

/** The page of a study: filters at the left, the trade-off above the table of runs, or chosen runs side by side. */
public final class StudyPart {
    private final RunBoard board;
    private final Commands commands;
    private final Theme theme;
    private final BorderPane page = new BorderPane();
    private final Label count = new Label();
    private final Label said = new Label();
    private final List<Button> orders = new ArrayList<>();
    private final SplitPane runs;
    private final Region filters;
    private final DrawnPane plot;

    public StudyPart(RunBoard board, Commands commands, Theme theme) {
        this.board = board;
        this.commands = commands;
        this.theme = theme;
        plot = new DrawnPane(theme, this::drawing, this::marks);
        plot.setId("study-plot");
        plot.setMinSize(200, 160);
        plot.setAccessibleText("Trade-off of two measures; the table below holds the same runs");
        plot.onClick(place -> board.at(place).ifPresent(board::toggle));
        BorderPane above = new BorderPane(plot);
        above.setTop(measures());
        above.getStyleClass().add("middle");
        runs = new SplitPane(above, new RunTable(board).node());
        runs.setOrientation(Orientation.VERTICAL);
        runs.setDividerPositions(0.6);
        page.getStyleClass().add("middle");
        page.setTop(head());
        filters = new FilterList(board).node();
        page.setLeft(filters);
        page.setCenter(runs);
        board.filter().addListener((observable, before, now) -> refresh());
        board.across().addListener((observable, before, now) -> refresh());
        board.up().addListener((observable, before, now) -> refresh());
        board.chosen().addListener((observable, before, now) -> refresh());
        refresh();
    }

    public Region node() {
        return page;
    }

    public RunBoard board() {
        return board;
    }

    /** Whether the comparison is shown. */
    public boolean comparing() {
        return page.getCenter() != runs;
    }

    /** Shows the runs again. */
    public void showRuns() {
        page.setCenter(runs);
        page.setLeft(filters);
        refresh();
    }

    /** Shows the pages of a comparison. */
    public void showComparison(List<Drawing> pages) {
        VBox list = new VBox(16);
        list.setAlignment(Pos.TOP_CENTER);
        list.setPadding(new Insets(16));
        for (Drawing one : pages) {
            DrawnPane sheet = new DrawnPane(theme, (width, height) -> one, List::of);
            sheet.setMaxWidth(1400);
            sheet.setMinHeight(Region.USE_PREF_SIZE);
            list.getChildren().add(sheet);
        }
        ScrollPane scroll = new ScrollPane(list);
        scroll.setId("study-comparison");
        scroll.setFitToWidth(true);
        page.setCenter(scroll);
        page.setLeft(null);
        refresh();
        scroll.requestFocus();
    }

    private Region head() {
        Label title = new Label(board.study().study().name());
        title.getStyleClass().add("title");
        count.getStyleClass().add("second");
        said.getStyleClass().add("second");
        VBox words = new VBox(2, title, new HBox(14, count, said));
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox row = new HBox(8, words, order("study.compare"), order("study.layout"), order("study.back"));
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPadding(new Insets(10, 18, 10, 18));
        return row;
    }

    private Button order(String id) {
        Button button = new Button(commands.byId(id).map(Command::name).orElse(id));
        button.setId(id.replace('.', '-'));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> commands.run(id));
        button.setUserData(id);
        orders.add(button);
        return button;
    }

    private Region measures() {
        HBox row = new HBox(
                8,
                new Label("Across"),
                choice("study-across", board.across().get(), board.across()::set),
                new Label("Up"),
                choice("study-up", board.up().get(), board.up()::set));
        row.setAlignment(Pos.CENTER_LEFT);
        row.setPadding(new Insets(6, 18, 6, 18));
        return row;
    }

    private ChoiceBox<Measure> choice(String id, Measure now, Consumer<Measure> chosen) {
        ChoiceBox<Measure> box = new ChoiceBox<>();
        box.setId(id);
        box.getItems().setAll(board.measures());
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable Measure measure) {
                return measure == null ? "" : measure.title();
            }

            @Override
            public Measure fromString(String text) {
                return now;
            }
        });
        box.setValue(now);
        box.valueProperty().addListener((observable, before, value) -> chosen.accept(value));
        return box;
    }

    /** Says again what can be done with the runs that are chosen. */
    public void refresh() {
        count.setText(board.count());
        List<Integer> chosen = board.chosen().get();
        said.setText(
                chosen.isEmpty()
                        ? "Click a run in the plot or the table to choose it."
                        : "Chosen: "
                                + String.join(
                                        ", ",
                                        chosen.stream().map(run -> "run " + run).toList()));
        for (Button button : orders) {
            commands.byId(String.valueOf(button.getUserData())).ifPresent(command -> {
                var obstacle = command.obstacle().get();
                button.setDisable(obstacle.isPresent());
                button.setText(comparing() && command.id().equals("study.back") ? "Back to the runs" : command.name());
                button.setTooltip(new Tooltip(obstacle.orElse(command.name())));
            });
        }
        plot.requestLayout();
    }

    private Drawing drawing(double width, double height) {
        board.size(width, height);
        return board.plot()
                .orElseGet(() -> new Drawing(
                        "Nothing to plot",
                        width,
                        height,
                        List.of(new org.shelterwright.app.drawing.Label(
                                "No run that is shown has both figures. Tick more boxes, or take another measure.",
                                new Spot(20, height / 2),
                                Typeface.sizeOf(2.2),
                                org.shelterwright.app.drawing.Label.Weight.REGULAR,
                                org.shelterwright.app.drawing.Label.Align.START,
                                0,
                                Role.MUTED.colour()))));
    }

    private List<Shape> marks() {
        List<Shape> marks = new ArrayList<>();
        for (Spot spot : board.marks()) {
            marks.add(new Circle(spot, 4, null, Pen.of(0.7, Role.ACCENT.colour())));
        }
        return marks;
    }
}
