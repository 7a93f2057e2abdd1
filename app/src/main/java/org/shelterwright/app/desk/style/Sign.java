package org.shelterwright.app.desk.style;

import javafx.scene.canvas.Canvas;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.layouts.ledger.Verdict;

/** The sign of a verdict as a node of its own. */
public final class Sign extends Canvas {
    private final Theme theme;
    private Verdict verdict;

    public Sign(Theme theme, Verdict verdict) {
        this.theme = theme;
        this.verdict = verdict;
        theme.onChange(this::paint);
        paint();
    }

    public void show(Verdict other) {
        if (verdict != other) {
            verdict = other;
            paint();
        }
    }

    private void paint() {
        double size = theme.sized(16);
        setWidth(size);
        setHeight(size);
        var context = getGraphicsContext2D();
        context.clearRect(0, 0, size, size);
        new Painter(context)
                .paint(VerdictSign.shapes(
                        verdict,
                        new Spot(size / 2, size / 2),
                        size * 0.41,
                        theme.ground().get()));
    }
}
