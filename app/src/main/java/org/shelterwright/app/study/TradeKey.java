package org.shelterwright.app.study;

import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Ground;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.study.results.RunResult;

/**
 * The key beside a plot of runs: what the signs mean, and which runs lie on its line.
 *
 * @param paper from the first line down and as wide as lines may be
 */
record TradeKey(Typeface typeface, Ground ground, Bounds paper) {
    static final double SIGN = 1.7;

    private static final double KEY_LINE = 4.4;
    private static final int MOST_IN_KEY = 22;

    void draw(List<Shape> shapes, List<RunResult> front) {
        double y = paper.y0();
        for (Verdict verdict : Verdict.values()) {
            shapes.addAll(VerdictSign.shapes(verdict, new Spot(paper.x0() + 2, y - 1), SIGN, ground));
            shapes.add(text(worst(verdict), new Spot(paper.x0() + 6, y), 2, Role.TEXT));
            y += KEY_LINE;
        }
        if (front.isEmpty()) {
            return;
        }
        y += 3;
        shapes.add(
                text("Runs on the line", new Spot(paper.x0(), y), 2, Role.TEXT).with(Label.Weight.SEMIBOLD));
        y += KEY_LINE;
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(2), Label.Weight.REGULAR);
        int room = Math.max(1, Math.min(MOST_IN_KEY, (int) ((paper.y1() - y - 4) / KEY_LINE)));
        for (RunResult run : front.subList(0, Math.min(room, front.size()))) {
            String line = String.join(", ", run.settings().values()) + ", seed " + run.seed();
            shapes.add(text(Integer.toString(run.run()), new Spot(paper.x0() + 8, y), 2, Role.TEXT)
                    .with(Label.Weight.SEMIBOLD)
                    .with(Align.END));
            shapes.add(text(wrap.shortened(line, paper.width() - 12), new Spot(paper.x0() + 10, y), 2, Role.TEXT));
            y += KEY_LINE;
        }
        if (front.size() > room) {
            shapes.add(text("and " + (front.size() - room) + " more", new Spot(paper.x0() + 10, y), 2, Role.MUTED));
        }
    }

    private static String worst(Verdict verdict) {
        return switch (verdict) {
            case BROKEN -> "some limit broken";
            case CLOSE -> "some limit close";
            case NOT_ASSESSED -> "some limit not assessed";
            case MET -> "every limit met";
        };
    }

    private Label text(String text, Spot at, double capitals, Role role) {
        return TradeOff.text(ground, text, at, capitals, role);
    }
}
