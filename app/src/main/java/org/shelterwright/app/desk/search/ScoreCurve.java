package org.shelterwright.app.desk.search;

import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.TextAlignment;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.solver.fit.FitProgress;

/**
 * How the best layout of a search got better with time. The fence in the middle is where all limits hold: above it is what lacks of
 * them, below it what lacks of the wishes.
 */
final class ScoreCurve extends Region {
    private static final double LEFT = 8;
    private static final double RIGHT = 12;
    private static final double TOP = 18;
    private static final double BOTTOM = 18;

    private static final double TICK = 4;
    private static final double TICKS = 8;

    private final Canvas canvas = new Canvas();
    private final Theme theme;
    private List<FitProgress> steps = List.of();

    ScoreCurve(Theme theme) {
        this.theme = theme;
        getChildren().add(canvas);
        setMinSize(120, 60);
        theme.onChange(this::paint);
    }

    void show(List<FitProgress> shown) {
        steps = shown;
        paint();
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        paint();
    }

    private void paint() {
        GraphicsContext context = canvas.getGraphicsContext2D();
        double width = canvas.getWidth();
        double height = canvas.getHeight();
        context.clearRect(0, 0, width, height);
        double right = width - RIGHT;
        double low = height - BOTTOM;
        context.setStroke(theme.color(Role.LINES));
        context.setLineWidth(1);
        context.strokeLine(LEFT + 0.5, TOP, LEFT + 0.5, low + 0.5);
        context.strokeLine(LEFT, low + 0.5, right, low + 0.5);
        context.setFill(theme.color(Role.MUTED));
        context.setFont(Fonts.of(Weight.REGULAR, theme.sized(11.5)));
        fence(context, low, right);
        if (steps.isEmpty()) {
            return;
        }
        Course course = new Course(steps);
        double end = Math.max(1, seconds(steps.get(steps.size() - 1)));
        context.setTextAlign(TextAlignment.RIGHT);
        context.fillText(Numerals.of(end, 0) + Numerals.GAP + "s", right, height - 4);
        context.setStroke(theme.color(Role.ACCENT));
        context.setLineWidth(2);
        context.beginPath();
        double before = y(course, steps.get(0), low);
        context.moveTo(LEFT, before);
        for (FitProgress step : steps) {
            double x = LEFT + (right - LEFT) * seconds(step) / end;
            context.lineTo(x, before);
            before = y(course, step, low);
            context.lineTo(x, before);
        }
        context.lineTo(right, before);
        context.stroke();
        context.setFill(theme.color(Role.ACCENT));
        context.fillOval(right - 3.5, before - 3.5, 7, 7);
    }

    /** Ticks stand on the side where a layout may not be. */
    private void fence(GraphicsContext context, double low, double right) {
        double y = low - Course.HOLDS * (low - TOP);
        context.setStroke(theme.color(Role.TEXT));
        context.setLineWidth(1.5);
        context.strokeLine(LEFT, y, right, y);
        context.setLineWidth(1);
        for (double x = LEFT + TICKS; x < right; x += TICKS) {
            context.strokeLine(x, y, x - TICK, y - TICK);
        }
        context.setTextAlign(TextAlignment.LEFT);
        context.fillText("limits lack", LEFT + 6, y - TICK - 5);
        context.fillText("all hold, wishes lack", LEFT + 6, low - 6);
    }

    private static double y(Course course, FitProgress step, double low) {
        return low - course.height(step.best()) * (low - TOP);
    }

    private static double seconds(FitProgress step) {
        return step.elapsed().toMillis() / 1000.0;
    }
}
