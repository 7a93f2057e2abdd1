package org.shelterwright.app.desk.bolt;

import java.util.Locale;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.solver.order.Schedule;

/** Below the view: a scrubber through the steps, and who does what when. */
final class OrderStrip {
    private static final double HEIGHT = 178;
    private static final double MOST_HEIGHT = 240;

    private final BoltDesk desk;
    private final Slider scrubber = new Slider(0, 1, 0);
    private final Label summary = new Label();
    private final ShiftPane shifts;
    private final VBox node;
    private boolean following;

    OrderStrip(BoltDesk desk, Theme theme) {
        this.desk = desk;
        shifts = new ShiftPane(desk, theme);
        Label title = new Label("Order");
        title.getStyleClass().add("title");
        title.setMinWidth(Region.USE_PREF_SIZE);
        summary.getStyleClass().add("second");
        summary.setWrapText(true);
        summary.setMinHeight(Region.USE_PREF_SIZE);
        HBox head = new HBox(14, title, summary);
        HBox.setHgrow(summary, Priority.ALWAYS);
        head.setAlignment(Pos.BASELINE_LEFT);
        scrubber.setId("bolt-scrubber");
        scrubber.setAccessibleText("Steps, from the empty body to the full one");
        scrubber.setBlockIncrement(1);
        scrubber.valueProperty().addListener((observable, before, now) -> {
            if (!following) {
                desk.at().set(now.doubleValue());
            }
        });
        VBox.setVgrow(shifts, Priority.ALWAYS);
        node = new VBox(4, head, scrubber, shifts);
        node.setPadding(new Insets(10, 18, 8, 18));
        node.setPrefHeight(Math.min(theme.sized(HEIGHT), MOST_HEIGHT));
        theme.onChange(() -> node.setPrefHeight(Math.min(theme.sized(HEIGHT), MOST_HEIGHT)));
        desk.stand().addListener((observable, before, now) -> show());
        desk.at().addListener((observable, before, now) -> show());
        show();
    }

    Region node() {
        return node;
    }

    private void show() {
        BoltStand stand = desk.stand().get();
        following = true;
        scrubber.setDisable(stand.steps() == 0);
        scrubber.setMax(Math.max(1, stand.steps()));
        scrubber.setMajorTickUnit(1);
        scrubber.setValue(desk.at().get());
        following = false;
        summary.setText(words(stand));
        shifts.show();
    }

    private static String words(BoltStand stand) {
        BoltDownPlan plan = stand.plan();
        Schedule schedule = stand.schedule();
        if (plan == null || schedule == null) {
            return "";
        }
        int fitters = schedule.fitters();
        long chain =
                schedule.shifts().stream().filter(shift -> shift.critical()).count();
        return String.format(
                Locale.ROOT,
                "%s, %s in all, %d pieces of work on the longest chain",
                fitters == 1 ? "one fitter" : fitters + " fitters",
                StepRow.time(schedule.lengthMinutes()),
                chain);
    }
}
