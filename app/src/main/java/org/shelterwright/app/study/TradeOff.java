package org.shelterwright.app.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Ground;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.layouts.study.results.Front;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;

/** Plots two measures of runs against each other: a verdict's sign for each run, and the front that no run beats. */
public final class TradeOff {
    private static final double BESIDE = 4.6;
    private static final double WIDTH = 297;
    private static final double HEIGHT = 190;
    private static final double KEY_WIDTH = 101;
    private static final double LEAST = 20;

    private final Typeface typeface;
    private final Ground ground;
    private final double width;
    private final double height;
    private final boolean alone;
    private final Bounds plot;
    private final double key;

    /** A plot that stands alone, on a sheet with title and foot. */
    public TradeOff(Typeface typeface, Ground ground) {
        this(typeface, ground, WIDTH, HEIGHT, true);
    }

    private TradeOff(Typeface typeface, Ground ground, double width, double height, boolean alone) {
        this.typeface = typeface;
        this.ground = ground;
        this.width = width;
        this.height = height;
        this.alone = alone;
        double top = alone ? 34 : 12;
        double bottom = alone ? 32 : 16;
        this.plot =
                new Bounds(34, top, Math.max(34 + LEAST, width - KEY_WIDTH), Math.max(top + LEAST, height - bottom));
        this.key = plot.x1() + 12;
    }

    /** A plot of a size (mm) that stands where title and study are told already. */
    public static TradeOff within(Typeface typeface, double width, double height) {
        return new TradeOff(typeface, Ground.LIGHT, width, height, false);
    }

    /**
     * The plot.
     *
     * @param title name of the study
     * @param foot one line below
     * @throws IllegalArgumentException with a sentence if no run has both figures
     */
    public Drawing of(String title, List<RunResult> runs, Measure across, Measure up, String foot) {
        List<RunResult> known = known(runs, across, up);
        if (known.isEmpty()) {
            throw new IllegalArgumentException(
                    "No run has both \"" + across.id() + "\" and \"" + up.id() + "\". Take another measure.");
        }
        boolean ordered = across.better() != Measure.Better.NEITHER && up.better() != Measure.Better.NEITHER;
        List<RunResult> front = ordered ? Front.of(known, across, up) : List.of();
        Scale x = scale(known, across);
        Scale y = scale(known, up);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(0, 0, width, height), colour(Role.PANEL), null));
        if (alone) {
            head(shapes, title, known.size(), runs.size(), front.size());
        }
        axes(shapes, x, y, across, up);
        if (!front.isEmpty()) {
            shapes.add(steps(front, across, up, x, y));
        }
        signs(shapes, known, front, across, up, x, y);
        new TradeKey(typeface, ground, new Bounds(key, plot.y0() - 5, width - (alone ? 12 : 0), height))
                .draw(shapes, front);
        if (alone) {
            shapes.add(text(foot, new Spot(plot.x0() - 20, height - 6), 1.8, Role.MUTED));
        }
        return new Drawing(title + ": " + across.title() + " against " + up.title(), width, height, shapes);
    }

    /** Where each run that has both figures lies on the plot, by its number. */
    public Map<Integer, Spot> spots(List<RunResult> runs, Measure across, Measure up) {
        Map<Integer, Spot> spots = new LinkedHashMap<>();
        List<RunResult> known = known(runs, across, up);
        if (!known.isEmpty()) {
            Scale x = scale(known, across);
            Scale y = scale(known, up);
            known.forEach(run -> spots.put(run.run(), spot(run, across, up, x, y)));
        }
        return spots;
    }

    private static List<RunResult> known(List<RunResult> runs, Measure across, Measure up) {
        return runs.stream()
                .filter(run -> across.of(run).isPresent() && up.of(run).isPresent())
                .toList();
    }

    private static Scale scale(List<RunResult> runs, Measure measure) {
        DoubleSummaryStatistics all =
                runs.stream().mapToDouble(run -> measure.of(run).orElseThrow()).summaryStatistics();
        return measure.unit().isEmpty()
                ? Scale.ofCounts(all.getMin(), all.getMax())
                : Scale.over(all.getMin(), all.getMax());
    }

    private void head(List<Shape> shapes, String title, int shown, int all, int front) {
        String fitting = new Wrap(typeface, Typeface.sizeOf(3.5), Label.Weight.SEMIBOLD).shortened(title, width - 28);
        shapes.add(text(fitting, new Spot(14, 15), 3.5, Role.TEXT).with(Label.Weight.SEMIBOLD));
        String counts = shown
                + (shown == 1 ? " run" : " runs")
                + (shown < all ? " of " + all + "; the others lack a figure" : "")
                + switch (front) {
                    case 0 -> "";
                    case 1 -> "; one of them no other run beats by both";
                    default -> "; the line joins the " + front + " that no other run beats by both";
                };
        shapes.add(text(counts, new Spot(14, 21), 2.2, Role.MUTED));
    }

    private void axes(List<Shape> shapes, Scale x, Scale y, Measure across, Measure up) {
        Pen thin = Pen.of(0.13, colour(Role.LINE));
        for (double mark : x.marks()) {
            double at = plot.x0() + x.share(mark) * plot.width();
            shapes.add(Lines.of(thin, new Spot(at, plot.y0()), new Spot(at, plot.y1())));
            shapes.add(text(figure(mark, x), new Spot(at, plot.y1() + 5), 2, Role.MUTED)
                    .with(Align.MIDDLE));
        }
        for (double mark : y.marks()) {
            double at = plot.y1() - y.share(mark) * plot.height();
            shapes.add(Lines.of(thin, new Spot(plot.x0(), at), new Spot(plot.x1(), at)));
            shapes.add(text(figure(mark, y), new Spot(plot.x0() - 2.5, at + 1), 2, Role.MUTED)
                    .with(Align.END));
        }
        shapes.add(Lines.of(
                Pen.of(0.35, colour(Role.LINES)),
                new Spot(plot.x0(), plot.y0()),
                new Spot(plot.x0(), plot.y1()),
                new Spot(plot.x1(), plot.y1())));
        shapes.add(text(words(across), new Spot(plot.x1(), plot.y1() + 11), 2.5, Role.TEXT)
                .with(Align.END));
        shapes.add(text(words(up), new Spot(plot.x0() - 20, plot.y0() - 5), 2.5, Role.TEXT));
    }

    private static String figure(double mark, Scale scale) {
        return Numerals.of(mark, scale.decimals());
    }

    private static String words(Measure measure) {
        String unit = measure.unit().isEmpty() ? "" : " (" + measure.unit() + ")";
        return measure.title()
                + unit
                + switch (measure.better()) {
                    case LESS -> ", less is better";
                    case MORE -> ", more is better";
                    case NEITHER -> "";
                };
    }

    private Spot spot(RunResult run, Measure across, Measure up, Scale x, Scale y) {
        return new Spot(
                plot.x0() + x.share(across.of(run).orElseThrow()) * plot.width(),
                plot.y1() - y.share(up.of(run).orElseThrow()) * plot.height());
    }

    /** Between two runs of the front nothing better is known than the worse of both by each measure. */
    private Shape steps(List<RunResult> front, Measure across, Measure up, Scale x, Scale y) {
        List<Spot> line = new ArrayList<>();
        boolean less = across.better() == Measure.Better.LESS;
        for (RunResult run : front) {
            Spot at = spot(run, across, up, x, y);
            if (!line.isEmpty()) {
                Spot before = line.get(line.size() - 1);
                line.add(less ? new Spot(at.x(), before.y()) : new Spot(before.x(), at.y()));
            }
            line.add(at);
        }
        return new Lines(List.of(line), Pen.of(0.5, colour(Role.ACCENT)));
    }

    private void signs(
            List<Shape> shapes,
            List<RunResult> runs,
            List<RunResult> front,
            Measure across,
            Measure up,
            Scale x,
            Scale y) {
        Set<Integer> best = new HashSet<>(front.stream().map(RunResult::run).toList());
        for (boolean onFront : new boolean[] {false, true}) {
            runs.stream()
                    .filter(run -> best.contains(run.run()) == onFront)
                    .sorted(Comparator.comparing(RunResult::verdict))
                    .forEach(run -> shapes.addAll(VerdictSign.shapes(
                            run.verdict(),
                            spot(run, across, up, x, y),
                            onFront ? TradeKey.SIGN * 1.35 : TradeKey.SIGN,
                            ground)));
        }
        List<Bounds> taken = new ArrayList<>();
        for (RunResult run : front) {
            Spot at = spot(run, across, up, x, y);
            long others = front.stream()
                    .filter(one -> one != run && spot(one, across, up, x, y).equals(at))
                    .count();
            Label name = name(run.run() + (others == 0 ? "" : " and " + others + " more"), at);
            Bounds room = typeface.bounds(name);
            if (taken.stream().noneMatch(room::overlaps)) {
                taken.add(room);
                shapes.add(name);
            }
        }
    }

    /** Beside its sign, outside of the ring around a chosen one, and never over what lies beside the plot. */
    private Label name(String words, Spot at) {
        Label right = text(words, at.plus(BESIDE, -2.2), 2.2, Role.TEXT).with(Label.Weight.SEMIBOLD);
        return typeface.bounds(right).x1() <= plot.x1()
                ? right
                : text(words, at.plus(-BESIDE, -2.2), 2.2, Role.TEXT)
                        .with(Label.Weight.SEMIBOLD)
                        .with(Align.END);
    }

    private Label text(String text, Spot at, double capitals, Role role) {
        return text(ground, text, at, capitals, role);
    }

    static Label text(Ground ground, String text, Spot at, double capitals, Role role) {
        return new Label(
                text, at, Typeface.sizeOf(capitals), Label.Weight.REGULAR, Align.START, 0, role.colour(ground));
    }

    private Colour colour(Role role) {
        return role.colour(ground);
    }
}
