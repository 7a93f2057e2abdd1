package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;

/** How the tasks of a card stand: short ones two in a row, where there are some, then the others over the full width. */
final class TaskRows {
    private static final int LEAST = 4;

    private TaskRows() {}

    /**
     * Rows of one task or two.
     *
     * @param half room for the text of one of two (mm)
     */
    static List<List<String>> of(List<String> tasks, Typeface typeface, Setting setting, double half) {
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(setting.text()), Weight.REGULAR);
        List<String> narrow = tasks.stream()
                .filter(task -> wrap.lines(task, half).size() == 1)
                .toList();
        List<List<String>> rows = new ArrayList<>();
        if (narrow.size() < LEAST) {
            tasks.forEach(task -> rows.add(List.of(task)));
            return rows;
        }
        for (int i = 0; i < narrow.size(); i += 2) {
            rows.add(narrow.subList(i, Math.min(i + 2, narrow.size())));
        }
        tasks.stream().filter(task -> !narrow.contains(task)).forEach(task -> rows.add(List.of(task)));
        return rows;
    }
}
