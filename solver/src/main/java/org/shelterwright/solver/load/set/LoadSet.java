package org.shelterwright.solver.load.set;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;

/**
 * A published set of loading problems as text: the count of problems; then for each a line with its number (and perhaps a
 * seed), a line {@code length width height} of the room, the count of kinds, and for each kind a line {@code number length
 * flag width flag height flag count}, where flag 1 says that this edge may stand upright. Lengths are whole, in any unit.
 *
 * <p>Source: Beasley, OR-Library: distributing test problems by electronic mail, Journal of the Operational Research
 * Society 41 (1990), files thpack1 to thpack9 (the form was read from the files).
 *
 * @param problems in the order of the file
 */
public record LoadSet(List<SetProblem> problems) {
    static final int MOST_PROBLEMS = 10_000;
    static final int MOST_KINDS = 2_000;
    static final int LONGEST = 10_000_000;

    /**
     * One problem.
     *
     * @param number as the file calls it
     * @param kinds named by their numbers in the file
     */
    public record SetProblem(int number, Size room, List<CargoKind> kinds) {
        public SetProblem {
            kinds = List.copyOf(kinds);
        }

        public LoadProblem with(Support support) {
            return LoadProblem.of(room, kinds, support);
        }

        public int pieces() {
            return kinds.stream().mapToInt(CargoKind::count).sum();
        }
    }

    public LoadSet {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a set.
     *
     * @throws InputException if it is not of this form, with the line and what is wrong
     */
    public static LoadSet read(InputFile file) {
        SetLines lines = new SetLines(file);
        int count = lines.single("the count of problems", MOST_PROBLEMS);
        List<SetProblem> problems = new ArrayList<>();
        for (int p = 0; p < count; p++) {
            problems.add(problem(lines));
        }
        lines.end(count);
        return new LoadSet(problems);
    }

    private static SetProblem problem(SetLines lines) {
        int number = lines.number();
        int[] room = lines.figures("the length, width and height of the room", 3, LONGEST);
        int kinds = lines.single("the count of kinds", MOST_KINDS);
        List<CargoKind> read = new ArrayList<>();
        int pieces = 0;
        for (int k = 0; k < kinds; k++) {
            CargoKind kind = lines.kind();
            pieces += kind.count();
            if (pieces > LoadProblem.MOST_PIECES) {
                throw lines.fault("Problem " + number + " has more than " + LoadProblem.MOST_PIECES
                        + " pieces, which is the most that can be loaded. Take some out.");
            }
            read.add(kind);
        }
        return new SetProblem(number, new Size(room[0], room[1], room[2]), read);
    }

    /**
     * The problem of a number.
     *
     * @param name of the file, for the message
     * @throws InputException if there is none
     */
    public SetProblem problem(int number, String name) {
        return problems.stream()
                .filter(one -> one.number() == number)
                .findFirst()
                .orElseThrow(() -> new InputException(
                        name, "There is no problem " + number + " in this set; it has " + range() + "."));
    }

    private String range() {
        if (problems.size() == 1) {
            return "problem " + problems.get(0).number() + " only";
        }
        return problems.size() + " problems, from " + problems.get(0).number() + " to "
                + problems.get(problems.size() - 1).number();
    }
}
