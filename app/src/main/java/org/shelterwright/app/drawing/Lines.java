package org.shelterwright.app.drawing;

import java.util.List;

/** Open lines that share a pen. */
public record Lines(List<List<Spot>> lines, Pen pen) implements Shape {

    public Lines {
        lines = lines.stream().map(List::copyOf).toList();
    }

    public static Lines of(Pen pen, Spot... spots) {
        return new Lines(List.of(List.of(spots)), pen);
    }

    @Override
    public void onto(Canvas canvas) {
        canvas.lines(lines, pen);
    }

    @Override
    public Lines moved(double dx, double dy) {
        return new Lines(
                lines.stream()
                        .map(line -> line.stream().map(s -> s.plus(dx, dy)).toList())
                        .toList(),
                pen);
    }
}
