package org.shelterwright.solver.bench;

import java.util.List;
import java.util.Objects;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.inside.Lockers;
import org.shelterwright.solver.inside.Stower;
import org.shelterwright.solver.inside.Stowing;
import org.shelterwright.solver.inside.pack.CutDrawer;
import org.shelterwright.solver.inside.pack.Packed;
import org.shelterwright.solver.inside.pack.Parcel;
import org.shelterwright.solver.inside.pack.Repacking;
import org.shelterwright.solver.inside.rack.RandomRacks;

/** Racks against trying everything, drawers cut without waste, and many pieces into many places. */
final class InsideRuns {
    private static final int CASES = 100;
    private static final long MOVES = 20_000;
    private static final int TRIES = 60;
    private static final int PIECES = 400;
    /** Lockers of three drawers each: sixty places. */
    private static final int LOCKERS = 20;

    private static final int TIMES = 3;

    private final Setting setting;

    InsideRuns(Setting setting) {
        this.setting = setting;
    }

    String run() {
        Machine machine = new Machine();
        Table racks = new Table(
                "way", "cases", "as cheap as the best", "leaves out what fits", "dearer by, mean of the others (%)");
        racks.add("exact, against trying everything", CASES, RandomRacks.exact(CASES), 0, "–");
        searched(racks, "search of 20 000 moves, against exact", RandomRacks.searched(CASES, MOVES, false));
        searched(racks, "the same where there is much to choose", RandomRacks.searched(CASES, MOVES, true));
        Table drawers = new Table("parts", "slack", "cases", "all in", "volume filled, mean (%)", "least (%)");
        for (int parts : List.of(3, 4, 5, 6, 8, 12)) {
            drawers(drawers, parts, 0, Box.ofMm(0, 0, 0, 600, 500, 250));
            drawers(drawers, parts, 10, Box.ofMm(0, 0, 0, 660, 550, 275));
        }
        return """
                # Inside the units

                Racks: %d seeded cases, 60 of 3 to 5 pieces in one or two bays, 30 of 6 and 10 of 7 to 9 in one; nearly no unit is spare. *Much to
                choose* are 100 others, of 12 to 16 pieces in one bay or 9 to 11 in two or three, with no more than two units spare. The program
                uses the exact way wherever it can (up to 400 000 choices of pieces in one bay, 8 000 in several), the search only beyond. One overstepped limit
                costs about a thousand times a moment, so the last column counts limits overstepped rather than kilograms.

                %s
                Drawers of 600 x 500 x 250 mm cut into parts without waste, packed again; slack is what the place is longer along
                each axis (%%).

                %s
                %d loose pieces into the drawers of %d lockers, from nothing, the full check included: wall clock of one thread.

                %s
                %s
                Date: %s.
                """.formatted(
                CASES, racks.text(), drawers.text(), PIECES, LOCKERS, many().text(), machine.text(), setting.date());
    }

    private static void searched(Table table, String way, RandomRacks.Searched found) {
        table.add(way, CASES, found.same(), found.leavesOut(), 100 * found.excess());
    }

    private static void drawers(Table table, int parts, int slack, Box place) {
        double sum = 0;
        double least = 1;
        int whole = 0;
        for (int seed = 0; seed < CASES; seed++) {
            Dice dice = Dice.of(seed, 1);
            List<Parcel> parcels = CutDrawer.parcels(parts, dice);
            List<Packed> packed = new Repacking(place, Face.TOP, 0.75)
                    .pack(List.of(), parcels, dice, TRIES)
                    .packed();
            double filled =
                    packed.stream().mapToDouble(one -> one.box().volumeM3()).sum() / CutDrawer.WHOLE.volumeM3();
            sum += filled;
            least = Math.min(least, filled);
            whole += packed.size() == parcels.size() ? 1 : 0;
        }
        table.add(parts, slack, CASES, whole, 100 * sum / CASES, 100 * least);
    }

    private Table many() {
        Table table = new Table("seed", "places", "stowed", "without a place", "broken rows", "time (s)", "same again");
        Stower stower = new Stower(Checker.standard());
        Layout layout = Lockers.of(LOCKERS, PIECES);
        long places = layout.brief().units().stream()
                .mapToLong(unit ->
                        Objects.requireNonNull(layout.item(unit)).stowages().size())
                .sum();
        for (long seed = setting.seed(); seed < setting.seed() + TIMES; seed++) {
            long begin = System.nanoTime();
            Stowing stowing = stower.stow(layout, seed);
            double seconds = (System.nanoTime() - begin) / 1e9;
            long broken = stowing.ledger().rows().stream()
                    .filter(row -> row.subject() == Subject.STOWAGE && row.verdict() == Verdict.BROKEN)
                    .count();
            boolean same = stower.arranged(layout, seed)
                    .contents()
                    .equals(stowing.layout().contents());
            table.add(seed, places, stowing.stowed(), stowing.toPlace().size(), broken, seconds, same ? "yes" : "no");
        }
        return table;
    }
}
