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
import org.shelterwright.solver.fit.FitScore;

/** How what lacks of the limits went down with time, on a scale by powers of ten: the floor is "nothing lacks". */
final class ScoreCurve extends Region {
    private static final double LEFT = 8;
    private static final double RIGHT = 12;
    private static final double TOP = 18;
    private static final double BOTTOM = 18;

    /** From 1 mm to 100 m. */
    private static final double DECADES = 5;

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
        if (steps.isEmpty()) {
            return;
        }
        double end = Math.max(1, seconds(steps.get(steps.size() - 1)));
        context.setTextAlign(TextAlignment.RIGHT);
        context.fillText(Numerals.of(end, 0) + Numerals.GAP + "s", right, height - 4);
        context.setStroke(theme.color(Role.ACCENT));
        context.setLineWidth(2);
        context.beginPath();
        double before = y(steps.get(0).best(), low);
        context.moveTo(LEFT, before);
        for (FitProgress step : steps) {
            double x = LEFT + (right - LEFT) * seconds(step) / end;
            context.lineTo(x, before);
            before = y(step.best(), low);
            context.lineTo(x, before);
        }
        context.lineTo(right, before);
        context.stroke();
        context.setFill(theme.color(Role.ACCENT));
        context.fillOval(right - 3.5, before - 3.5, 7, 7);
    }

    private static double y(FitScore score, double low) {
        double lackingMm = (score.hard() + score.medium()) / 1000.0;
        double share = lackingMm <= 0 ? 0 : Math.min(1, (0.6 + Math.log10(Math.max(1, lackingMm))) / DECADES);
        return low - share * (low - TOP);
    }

    private static double seconds(FitProgress step) {
        return step.elapsed().toMillis() / 1000.0;
    }
}
