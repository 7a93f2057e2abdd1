package org.shelterwright.app.desk.bolt;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Role;
import org.shelterwright.solver.order.Schedule;
import org.shelterwright.solver.order.Shift;

/** Who does what when: a line for each fitter, a block for each piece of work, an upright line where the work stands. */
final class ShiftPane extends Region {
    private static final double NAMES = 62;
    private static final double SCALE = 18;
    private static final double GAP = 3;
    private static final double MARK = 46;
    private static final double[] MARKS = {10, 30, 60, 120, 240, 480, 1440};

    private final BoltDesk desk;
    private final Theme theme;
    private final Canvas canvas = new Canvas();

    ShiftPane(BoltDesk desk, Theme theme) {
        this.desk = desk;
        this.theme = theme;
        getChildren().add(canvas);
        setMinSize(0, 60);
        setAccessibleText("Who does what when; the same is in the list of steps");
        setOnMousePressed(this::pressed);
        theme.onChange(this::show);
    }

    void show() {
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        GraphicsContext context = canvas.getGraphicsContext2D();
        context.clearRect(0, 0, getWidth(), getHeight());
        Schedule schedule = desk.stand().get().schedule();
        if (schedule != null && schedule.lengthMinutes() > 0) {
            paint(context, schedule);
        }
    }

    private void paint(GraphicsContext context, Schedule schedule) {
        double text = theme.sized(11.5);
        double top = theme.sized(SCALE);
        double lane = (getHeight() - top - 4) / schedule.fitters();
        context.setTextBaseline(VPos.CENTER);
        context.setFont(Fonts.of(Weight.REGULAR, text));
        context.setTextAlign(TextAlignment.CENTER);
        double every = every(schedule);
        for (double minutes = 0; minutes <= schedule.lengthMinutes(); minutes += every) {
            double x = x(minutes, schedule);
            context.setStroke(theme.color(Role.LINE));
            context.setLineWidth(1);
            context.strokeLine(x, top, x, getHeight());
            context.setFill(theme.color(Role.MUTED));
            context.fillText(minutes % 60 == 0 ? Math.round(minutes / 60) + " h" : StepRow.time(minutes), x, top / 2);
        }
        context.setTextAlign(TextAlignment.LEFT);
        for (int fitter = 0; fitter < schedule.fitters(); fitter++) {
            context.setFill(theme.color(Role.TEXT));
            context.fillText("Fitter " + (char) ('A' + fitter), 0, top + lane * (fitter + 0.5));
        }
        for (Shift shift : schedule.shifts()) {
            paint(context, shift, schedule, top, lane);
        }
        playhead(context, schedule, top);
    }

    private void paint(GraphicsContext context, Shift shift, Schedule schedule, double top, double lane) {
        int now = desk.number();
        double x = x(shift.fromMinutes(), schedule);
        double wide = Math.max(1, x(shift.toMinutes(), schedule) - x - 1);
        List<Integer> fitters = shift.fitters();
        int first = fitters.stream().mapToInt(Integer::intValue).min().orElse(0);
        int last = fitters.stream().mapToInt(Integer::intValue).max().orElse(0);
        boolean together = last - first + 1 == fitters.size();
        for (int fitter : together ? List.of(first) : fitters) {
            double y = top + lane * fitter + GAP;
            double high = lane * (together ? last - first + 1 : 1) - 2 * GAP;
            boolean done = shift.step() < now;
            boolean current = shift.step() == now;
            context.setFill(theme.color(current ? Role.ACCENT : done ? Role.MET_WASH : Role.RAISED));
            context.fillRect(x, y, wide, high);
            context.setStroke(theme.color(current ? Role.ACCENT : done ? Role.MET : Role.LINES));
            context.setLineWidth(shift.critical() ? 1.8 : 1);
            context.setLineDashes(done || current ? new double[0] : new double[] {4, 3});
            context.strokeRect(x, y, wide, high);
            context.setLineDashes();
            if (!shift.bringingIn()) {
                context.setFill(theme.color(current ? Role.ON_ACCENT : Role.TEXT));
                name(context, shift, x, wide, y + high / 2);
            }
        }
    }

    /** The longest name that has room in a block. */
    private void name(GraphicsContext context, Shift shift, double x, double wide, double middle) {
        Font font = Fonts.of(Weight.SEMIBOLD, theme.sized(11.5));
        String number = String.valueOf(shift.step());
        for (String words : shift.onBench() ? List.of("bench " + number, number) : List.of(number)) {
            if (width(words, font) < wide - 2) {
                context.setFont(font);
                context.setTextAlign(TextAlignment.CENTER);
                context.fillText(words, x + wide / 2, middle);
                return;
            }
        }
    }

    private void playhead(GraphicsContext context, Schedule schedule, double top) {
        int now = desk.number();
        for (Shift shift : schedule.shifts()) {
            if (shift.step() == now && shift.bringingIn()) {
                double minutes = shift.fromMinutes() + desk.along() * (shift.toMinutes() - shift.fromMinutes());
                double x = x(minutes, schedule);
                context.setStroke(theme.color(Role.TEXT));
                context.setLineWidth(2);
                context.strokeLine(x, top - 4, x, getHeight());
                context.setFill(theme.color(Role.TEXT));
                context.fillPolygon(new double[] {x - 5, x + 5, x}, new double[] {top - 10, top - 10, top - 2}, 3);
            }
        }
    }

    private void pressed(MouseEvent event) {
        Schedule schedule = desk.stand().get().schedule();
        if (schedule == null) {
            return;
        }
        for (Shift shift : schedule.shifts()) {
            double x0 = x(shift.fromMinutes(), schedule);
            double x1 = x(shift.toMinutes(), schedule);
            double lane = (getHeight() - theme.sized(SCALE) - 4) / schedule.fitters();
            int fitter = (int) ((event.getY() - theme.sized(SCALE)) / lane);
            if (event.getX() >= x0 && event.getX() < x1 && shift.fitters().contains(fitter)) {
                desk.go(shift.step());
            }
        }
    }

    private double x(double minutes, Schedule schedule) {
        double names = theme.sized(NAMES);
        return names + (getWidth() - names - 8) * minutes / schedule.lengthMinutes();
    }

    /** The shortest time between two marks that leaves room for their words (min). */
    private double every(Schedule schedule) {
        double room = theme.sized(MARK);
        for (double minutes : MARKS) {
            if (x(minutes, schedule) - x(0, schedule) >= room) {
                return minutes;
            }
        }
        return MARKS[MARKS.length - 1];
    }

    private static double width(String words, Font font) {
        Text text = new Text(words);
        text.setFont(font);
        return text.getLayoutBounds().getWidth();
    }
}
