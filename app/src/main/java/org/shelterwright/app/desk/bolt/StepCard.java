package org.shelterwright.app.desk.bolt;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.boltdown.CableTask;
import org.shelterwright.layouts.boltdown.Datum;
import org.shelterwright.layouts.boltdown.StepCheck;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/** What is to be done in the step that is looked at, and the limits that concern it. */
final class StepCard {
    private static final double SKETCH_WIDTH = 200;
    private static final double SKETCH_HEIGHT = 118;
    private static final int MOST_ROWS = 5;

    private final BoltDesk desk;
    private final Theme theme;
    private final VBox body = new VBox(10);
    private final ScrollPane node = new ScrollPane(body);
    private int shown = -1;
    private BoltStand stood = BoltStand.NONE;

    StepCard(BoltDesk desk, Theme theme) {
        this.desk = desk;
        this.theme = theme;
        body.setPadding(new Insets(12, 18, 14, 18));
        node.setFitToWidth(true);
        node.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        node.getStyleClass().add("column");
        node.setId("step-card");
        desk.stand().addListener((observable, before, now) -> show());
        desk.at().addListener((observable, before, now) -> show());
        theme.onChange(() -> {
            shown = -1;
            show();
        });
        show();
    }

    Region node() {
        return node;
    }

    private void show() {
        if (shown == desk.number() && stood == desk.stand().get()) {
            return;
        }
        shown = desk.number();
        stood = desk.stand().get();
        body.getChildren().clear();
        desk.step().ifPresentOrElse(this::fill, this::none);
    }

    private void none() {
        body.getChildren()
                .setAll(
                        styled("No steps yet", "title"),
                        styled(
                                stood.working()
                                        ? "The steps are being worked out."
                                        : "Find an order: everything that is placed then has its step, with its way in, its"
                                                + " dimensions, bolts and torques.",
                                "second"));
    }

    private void fill(BoltDownStep step) {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Label time = styled(StepRow.time(step.minutes()), "second");
        time.setMinWidth(Region.USE_PREF_SIZE);
        Label title = styled("Step " + step.number() + ", " + step.unit().name(), "title");
        HBox head = new HBox(8, title, gap, time);
        head.setAlignment(Pos.BASELINE_LEFT);
        body.getChildren().add(head);
        String hold = step.hold();
        if (hold != null) {
            body.getChildren().add(styled(hold, "strong"));
        }
        body.getChildren().add(facts(step));
        List<Shape> sketch = BoltSketch.shapes(
                step,
                new Bounds(1, 1, SKETCH_WIDTH / ScreenCanvas.PIXELS - 1, SKETCH_HEIGHT / ScreenCanvas.PIXELS - 1));
        if (!sketch.isEmpty()) {
            Canvas canvas = new Canvas(SKETCH_WIDTH, SKETCH_HEIGHT);
            new ScreenCanvas(canvas.getGraphicsContext2D(), new Worn(theme)).draw(sketch);
            body.getChildren().add(new VBox(4, styled("Order of tightening", "strong"), canvas));
        }
        list("Cautions", step.cautions());
        list("Cables", step.cables().stream().map(CableTask::text).toList());
        list("Checks", step.checks().stream().map(StepCard::check).toList());
        ledger(step);
    }

    private Region facts(BoltDownStep step) {
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(5);
        fact(grid, "Stands at", step.datums().stream().map(Datum::text).toList());
        fact(grid, "Way in", List.of(way(step)));
        fact(grid, "Lift", List.of(lift(step.handling())));
        fact(
                grid,
                "Fixings",
                step.boltings().isEmpty()
                        ? List.of("none: it is loose or hangs in its host")
                        : step.boltings().stream().map(Bolting::text).toList());
        List<String> torques =
                step.boltings().stream().map(StepCard::torque).distinct().toList();
        if (!torques.isEmpty()) {
            fact(grid, "Torque", torques);
        }
        if (!step.tools().isEmpty()) {
            fact(grid, "Tools", List.of(String.join(", ", step.tools())));
        }
        return grid;
    }

    private static void fact(GridPane grid, String name, List<String> values) {
        Label named = styled(name, "second");
        named.setMinWidth(Region.USE_PREF_SIZE);
        Label said = styled(String.join("\n", values), "label");
        GridPane.setHgrow(said, Priority.ALWAYS);
        GridPane.setValignment(named, VPos.TOP);
        grid.addRow(grid.getRowCount(), named, said);
    }

    static String way(BoltDownStep step) {
        return switch (step.passage().answer()) {
            case FREE -> {
                var opening = step.passage().opening();
                String last = new Course(step.passage()).lastWords();
                yield (opening == null ? "stands outside" : "through " + opening.name())
                        + (last.isEmpty() ? "" : ", " + last + " to its place");
            }
            case BLOCKED -> "none past what is in already";
            case TOO_LARGE -> "none: it comes through no opening";
            case OVERLAPS -> "not looked for: it overlaps others where it stands";
        };
    }

    private static String lift(@Nullable Handling handling) {
        if (handling == null) {
            return "mass not known: weigh it first";
        }
        String people = handling.people() == 1 ? "one person" : handling.people() + " people";
        return Numerals.short3(handling.massKg()) + Numerals.GAP + "kg, "
                + handling.means().words() + ", " + people + (handling.held() ? "" : ": more than that bears");
    }

    private static String torque(Bolting one) {
        Double last = one.finalNm();
        Double first = one.firstNm();
        if (last == null) {
            return "not known: " + one.missing();
        }
        String unit = Numerals.GAP + "N·m";
        return first == null
                ? Numerals.short3(last) + unit
                : Numerals.short3(first) + unit + ", then " + Numerals.short3(last) + unit;
    }

    private static String check(StepCheck check) {
        return check.hint().isEmpty() ? check.text() : check.text() + " (" + check.hint() + ")";
    }

    private void list(String title, List<String> lines) {
        if (!lines.isEmpty()) {
            VBox box = new VBox(3, styled(title, "strong"));
            lines.forEach(line -> box.getChildren().add(styled(line, "label")));
            body.getChildren().add(box);
        }
    }

    private void ledger(BoltDownStep step) {
        List<Row> rows = desk.session().now().ledger().rows().stream()
                .filter(row -> row.subject() == Subject.BOLT_DOWN)
                .filter(row -> row.units().contains(step.unit().id()))
                .collect(Collectors.toCollection(ArrayList::new));
        if (rows.isEmpty()) {
            return;
        }
        VBox box = new VBox(5, styled("Ledger of this step", "strong"));
        for (Row row : rows.subList(0, Math.min(MOST_ROWS, rows.size()))) {
            Label words = styled(row.verdict() == Verdict.MET ? row.title() : row.finding(), "label");
            HBox.setHgrow(words, Priority.ALWAYS);
            HBox line = new HBox(8, new Sign(theme, row.verdict()), words);
            Double use = row.use();
            if (use != null && row.verdict() != Verdict.MET) {
                Label figure = styled(Numerals.of(use, 2), "figure");
                figure.setMinWidth(Region.USE_PREF_SIZE);
                line.getChildren().add(figure);
            }
            line.setAlignment(Pos.TOP_LEFT);
            box.getChildren().add(line);
        }
        body.getChildren().add(box);
    }

    private static Label styled(String words, String style) {
        Label label = new Label(words);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
