package org.shelterwright.app.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;

/** Sets the parts of a report one under the other on pages, each part whole on its page. Not for several threads. */
public final class Flow {

    /** Height of a line of running text (mm). */
    public static final double LINE = 4.7;

    private static final double TEXT = 2.2;
    private static final double MARGIN = 20;
    private static final double TOP = 30;
    private static final double BOTTOM = 22;
    private static final int TORN = 4;

    private final Typeface typeface;
    private final double width;
    private final double height;
    private final String title;
    private final String subtitle;
    private final String foot;
    private final List<List<Shape>> pages = new ArrayList<>();
    private double y;

    /**
     * @param size of the pages; A4 stands, others lie
     * @param foot one line at the foot of every page
     */
    public Flow(Typeface typeface, SheetSize size, String title, String subtitle, String foot) {
        this.typeface = typeface;
        this.width = size.width();
        this.height = size.height();
        this.title = title;
        this.subtitle = subtitle;
        this.foot = foot;
        newPage();
    }

    public double left() {
        return MARGIN;
    }

    public double right() {
        return width - MARGIN / 2 - 5;
    }

    /** Adds a part of a height (mm), which is given the place of its upper edge. */
    public void add(double partHeight, Function<Double, List<Shape>> part) {
        need(partHeight);
        page().addAll(part.apply(y));
        y += partHeight;
    }

    public void gap(double by) {
        y += by;
    }

    /** Begins a new page if less than a height (mm) is left. */
    public void need(double partHeight) {
        if (!fits(partHeight)) {
            newPage();
        }
    }

    /** Whether a part of a height (mm) still fits this page. */
    public boolean fits(double partHeight) {
        return y + partHeight <= height - BOTTOM;
    }

    /** Sets a part on one page, a new one if need be; one that no page holds runs on as it comes. */
    public void together(Runnable part) {
        int page = pages.size();
        List<Shape> before = List.copyOf(page());
        double at = y;
        part.run();
        if (pages.size() > page && !before.isEmpty()) {
            back(page, before, at);
            newPage();
            part.run();
            if (pages.size() > page + 1) {
                back(page, before, at);
                part.run();
            }
        }
    }

    private void back(int page, List<Shape> shapes, double at) {
        while (pages.size() > page) {
            pages.remove(pages.size() - 1);
        }
        page().clear();
        page().addAll(shapes);
        y = at;
    }

    public void heading(String text) {
        heading(text, 24);
    }

    /** A heading that stays with what follows on the same page, by its height with that (mm). */
    public void heading(String text, double together) {
        gap(4);
        need(together);
        add(
                8,
                top -> List.of(
                        Lettering.bold(text, new Spot(left(), top + 4), 3),
                        Lines.of(
                                Pen.of(0.25, Role.LINES.colour()),
                                new Spot(left(), top + 6.2),
                                new Spot(right(), top + 6.2))));
    }

    public void paragraph(String text) {
        paragraph(text, 0, Weight.REGULAR);
    }

    /** A paragraph whose lines begin farther in; a short one is not torn. */
    public void paragraph(String text, double indent, Weight weight) {
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), weight);
        List<String> lines = wrap.lines(text, right() - left() - indent);
        if (lines.size() <= TORN) {
            need(LINE * lines.size());
        }
        for (String line : lines) {
            add(
                    LINE,
                    top -> List.of(Lettering.of(line, new Spot(left() + indent, top + 3.4), TEXT)
                            .with(weight)));
        }
    }

    /** A name and what it stands for, side by side. */
    public void pair(String name, String value) {
        double indent = 52;
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(TEXT), Weight.REGULAR);
        List<String> lines = wrap.lines(value, right() - left() - indent);
        add(LINE * lines.size(), top -> {
            List<Shape> shapes = new ArrayList<>();
            String fitting = wrap.shortened(name, indent - 3);
            shapes.add(Lettering.muted(fitting, new Spot(left(), top + 3.4), TEXT));
            for (int i = 0; i < lines.size(); i++) {
                shapes.add(Lettering.of(lines.get(i), new Spot(left() + indent, top + 3.4 + LINE * i), TEXT));
            }
            return shapes;
        });
    }

    /** The pages, with head and foot. */
    public List<Drawing> pages() {
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            String number = i + 1 + " / " + pages.size();
            List<Shape> shapes = new ArrayList<>(pages.get(i));
            shapes.addAll(frame(number));
            drawings.add(new Drawing(title + ", page " + number, width, height, shapes));
        }
        return drawings;
    }

    private List<Shape> frame(String number) {
        Pen line = Pen.of(0.35, Role.TEXT.colour());
        Label name = Lettering.bold(title, new Spot(left(), 17), 3);
        double after = left() + typeface.width(name) + 4;
        List<Shape> shapes = new ArrayList<>(List.of(
                name,
                Lettering.muted(subtitle, new Spot(after, 17), TEXT),
                Lettering.muted(number, new Spot(right(), 17), TEXT).with(Align.END),
                Lines.of(line, new Spot(left(), 20.5), new Spot(right(), 20.5)),
                Lines.of(
                        Pen.of(0.18, Role.LINES.colour()),
                        new Spot(left(), height - 16),
                        new Spot(right(), height - 16))));
        List<String> lines = new Wrap(typeface, Typeface.sizeOf(1.8), Weight.REGULAR).lines(foot, right() - left());
        for (int i = 0; i < lines.size(); i++) {
            shapes.add(Lettering.muted(lines.get(i), new Spot(left(), height - 12 + 3.6 * i), 1.8));
        }
        return shapes;
    }

    private List<Shape> page() {
        return pages.get(pages.size() - 1);
    }

    public final void newPage() {
        pages.add(new ArrayList<>());
        y = TOP;
    }
}
