package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.layouts.transport.scene.Shape;

/** Crates side by side across a deck: rows of like length, so that one tie-down goes over all of a row. */
record Row(List<Shape> crates, int length, int width) {
    Row {
        crates = List.copyOf(crates);
    }

    double kg() {
        return crates.stream().mapToDouble(Shape::mostKg).sum();
    }

    /** The rows of crates on a deck of a width, the longest crates first. */
    static List<Row> of(List<Shape> crates, int deckWidth) {
        List<Shape> left = new ArrayList<>(crates);
        left.sort(Comparator.comparing((Shape one) -> -one.size().x())
                .thenComparing(one -> -one.size().z())
                .thenComparing(one -> -one.mostKg())
                .thenComparing(Shape::id));
        List<Row> rows = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Shape> row = new ArrayList<>();
            int width = 0;
            for (Shape one : List.copyOf(left)) {
                boolean like =
                        row.isEmpty() || one.size().z() == row.get(0).size().z();
                if (like && width + one.size().y() <= deckWidth) {
                    row.add(one);
                    width += one.size().y();
                    left.remove(one);
                }
            }
            if (row.isEmpty()) {
                row.add(left.remove(0));
                width = row.get(0).size().y();
            }
            rows.add(new Row(row, row.get(0).size().x(), width));
        }
        return rows;
    }
}
