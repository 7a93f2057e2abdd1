package org.shelterwright.app.type;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Label.Weight;

/** Breaks text into lines of a width. */
public final class Wrap {

    private final Typeface typeface;
    private final double size;
    private final Weight weight;

    public Wrap(Typeface typeface, double size, Weight weight) {
        this.typeface = typeface;
        this.size = size;
        this.weight = weight;
    }

    /** The lines of a text; a word wider than the width (mm) is cut. Cost: linear in the words. */
    public List<String> lines(String text, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (fits(longer, width)) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (!fits(line, width) && line.length() > 1) {
                int end = line.length() - 1;
                while (end > 1 && !fits(line.substring(0, end), width)) {
                    end--;
                }
                lines.add(line.substring(0, end));
                line = line.substring(end);
            }
        }
        lines.add(line);
        return lines;
    }

    /** The text, or as much of it as fits a width (mm), with a sign that some is left out. */
    public String shortened(String text, double width) {
        if (fits(text, width)) {
            return text;
        }
        int end = text.length();
        while (end > 0 && !fits(text.substring(0, end).stripTrailing() + "…", width)) {
            end--;
        }
        return text.substring(0, end).stripTrailing() + "…";
    }

    private boolean fits(String text, double width) {
        return typeface.width(text, size, weight) <= width;
    }
}
