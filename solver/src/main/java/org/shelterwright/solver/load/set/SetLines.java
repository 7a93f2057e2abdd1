package org.shelterwright.solver.load.set;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Upright;

/** The lines of a set, one after the other, each of whole numbers. Empty lines are passed over. */
final class SetLines {
    private static final int SHOWN = 30;
    private static final int KIND = 8;

    private final String name;
    private final List<String> lines;
    private int at;

    SetLines(InputFile file) {
        name = file.name();
        lines = new String(file.bytes(), StandardCharsets.UTF_8).lines().toList();
    }

    /** The next line that holds something. */
    private String[] next(String wanted) {
        while (at < lines.size() && lines.get(at).isBlank()) {
            at++;
        }
        if (at == lines.size()) {
            throw new InputException(
                    name, "The file ends where " + wanted + " should stand. Maybe a part of it is missing.");
        }
        return lines.get(at++).strip().split("\\s+");
    }

    /** The number of a problem, with or without a seed behind it. */
    int number() {
        String[] words = next("the number of a problem");
        if (words.length > 2) {
            throw fault("Here the number of a problem should stand, perhaps with a seed behind it, but there are "
                    + words.length + " figures.");
        }
        return figure(words[0], "the number of a problem", 1, Integer.MAX_VALUE);
    }

    int single(String wanted, int most) {
        return figures(wanted, 1, most)[0];
    }

    int[] figures(String wanted, int count, int most) {
        String[] words = next(wanted);
        if (words.length != count) {
            throw fault("Here " + wanted + " should stand (" + count + (count == 1 ? " figure" : " figures")
                    + "), but there are " + words.length + ".");
        }
        int[] figures = new int[count];
        for (int i = 0; i < count; i++) {
            figures[i] = figure(words[i], wanted, 1, most);
        }
        return figures;
    }

    CargoKind kind() {
        String wanted = "a kind";
        String[] words = next(wanted);
        if (words.length != KIND) {
            throw fault("Here a kind should stand (number, length, flag, width, flag, height, flag, count: 8 figures),"
                    + " but there are " + words.length + ".");
        }
        int number = figure(words[0], "the number of a kind", 0, Integer.MAX_VALUE);
        int x = figure(words[1], "a length", 1, LoadSet.LONGEST);
        int y = figure(words[3], "a width", 1, LoadSet.LONGEST);
        int z = figure(words[5], "a height", 1, LoadSet.LONGEST);
        boolean uprightX = flag(words[2]);
        boolean uprightY = flag(words[4]);
        boolean uprightZ = flag(words[6]);
        int count = figure(words[7], "a count", 1, LoadProblem.MOST_PIECES);
        if (!uprightX && !uprightY && !uprightZ) {
            throw fault("Kind " + number + " may stand on no side: all its flags are 0. Set at least one to 1.");
        }
        return CargoKind.of(
                Integer.toString(number), new Size(x, y, z), new Upright(uprightX, uprightY, uprightZ), count);
    }

    private boolean flag(String word) {
        return figure(word, "a flag", 0, 1) == 1;
    }

    private int figure(String word, String wanted, int least, int most) {
        if (!word.matches("[0-9]{1,10}")) {
            throw fault("Here " + wanted + " should stand, but \"" + shown(word) + "\" is no whole number.");
        }
        long value = Long.parseLong(word);
        if (value < least || value > most) {
            throw fault(
                    "Here " + wanted + " should stand, but " + value + " is not from " + least + " to " + most + ".");
        }
        return (int) value;
    }

    private static String shown(String word) {
        String plain = word.replaceAll("[\\p{Cntrl}\\p{Cs}]", " ");
        return plain.length() <= SHOWN ? plain : plain.substring(0, SHOWN) + "…";
    }

    /** Nothing may follow the last problem. */
    void end(int problems) {
        while (at < lines.size()) {
            if (!lines.get(at++).isBlank()) {
                throw fault("The file should end here, after the " + problems
                        + (problems == 1 ? " problem" : " problems") + " that its first line tells.");
            }
        }
    }

    /** What is wrong with the line read last. */
    InputException fault(String sentence) {
        return new InputException(name + ", line " + at, sentence);
    }
}
