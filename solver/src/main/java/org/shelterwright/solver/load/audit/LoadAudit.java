package org.shelterwright.solver.load.audit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;

/**
 * Checks a load from scratch, in whole numbers where lengths are concerned: every piece inside the room, none overlapping
 * another, in an allowed stance, no more pieces than there are, fully supported, and all that practice asks. It shares no
 * code with the search. Cost grows with the square of the number of pieces.
 */
public final class LoadAudit {
    private final LoadProblem problem;
    private final List<Stowed> stowed;
    private final List<String> faults = new ArrayList<>();

    private LoadAudit(LoadProblem problem, Load load) {
        this.problem = problem;
        this.stowed = load.stowed();
    }

    /** What is wrong with a load, each in one sentence; empty if nothing is. */
    public static List<String> of(LoadProblem problem, Load load) {
        List<String> faults = places(problem, load);
        return faults.isEmpty() ? new PracticeAudit(problem, load).faults() : faults;
    }

    /** What is wrong with where and how pieces stand, whatever else is asked of the load. */
    public static List<String> places(LoadProblem problem, Load load) {
        LoadAudit audit = new LoadAudit(problem, load);
        audit.counts();
        audit.stances();
        audit.places();
        if (problem.support() == Support.FULL) {
            audit.support();
        }
        return List.copyOf(audit.faults);
    }

    private void counts() {
        int[] counts = new int[problem.kinds().size()];
        for (Stowed one : stowed) {
            if (one.kind() < 0 || one.kind() >= counts.length) {
                faults.add("There is no kind " + one.kind() + ".");
            } else {
                counts[one.kind()]++;
            }
        }
        for (int k = 0; k < counts.length; k++) {
            CargoKind kind = problem.kinds().get(k);
            if (counts[k] > kind.count()) {
                faults.add(
                        counts[k] + " pieces of " + kind.name() + " are loaded, but there are " + kind.count() + ".");
            }
        }
    }

    private void stances() {
        for (Stowed one : stowed) {
            if (one.kind() >= 0 && one.kind() < problem.kinds().size() && !stance(one)) {
                faults.add("A piece of " + problem.kinds().get(one.kind()).name() + " has the extents " + extents(one)
                        + ", in which it may not stand.");
            }
        }
    }

    private boolean stance(Stowed one) {
        CargoKind kind = problem.kinds().get(one.kind());
        Size size = kind.size();
        Box box = one.box();
        int dx = box.x1() - box.x0();
        int dy = box.y1() - box.y0();
        int dz = box.z1() - box.z0();
        return (kind.upright().x() && dz == size.x() && pair(dx, dy, size.y(), size.z()))
                || (kind.upright().y() && dz == size.y() && pair(dx, dy, size.x(), size.z()))
                || (kind.upright().z() && dz == size.z() && pair(dx, dy, size.x(), size.y()));
    }

    private static boolean pair(int a, int b, int c, int d) {
        return (a == c && b == d) || (a == d && b == c);
    }

    private static String extents(Stowed one) {
        Box box = one.box();
        return (box.x1() - box.x0()) + " x " + (box.y1() - box.y0()) + " x " + (box.z1() - box.z0());
    }

    private void places() {
        Size room = problem.room();
        for (int i = 0; i < stowed.size(); i++) {
            Box a = stowed.get(i).box();
            if (a.x0() < 0 || a.y0() < 0 || a.z0() < 0 || a.x1() > room.x() || a.y1() > room.y() || a.z1() > room.z()) {
                faults.add("Piece " + (i + 1) + " is not inside the room.");
            }
            for (int j = 0; j < i; j++) {
                if (share(a, stowed.get(j).box())) {
                    faults.add("Pieces " + (j + 1) + " and " + (i + 1) + " overlap.");
                }
            }
            for (Box free : problem.practice().keptFree()) {
                if (share(a, free)) {
                    faults.add("Piece " + (i + 1) + " stands in space that is to be kept free.");
                }
            }
        }
    }

    private static boolean share(Box a, Box b) {
        return length(a.x0(), a.x1(), b.x0(), b.x1()) > 0
                && length(a.y0(), a.y1(), b.y0(), b.y1()) > 0
                && length(a.z0(), a.z1(), b.z0(), b.z1()) > 0;
    }

    private static long length(int a0, int a1, int b0, int b1) {
        return (long) Math.min(a1, b1) - Math.max(a0, b0);
    }

    /** The areas of contact with what ends at the height of a base add up to the base, since none of it overlaps. */
    private void support() {
        for (int i = 0; i < stowed.size(); i++) {
            Box upper = stowed.get(i).box();
            if (upper.z0() != 0) {
                long base = (long) (upper.x1() - upper.x0()) * (upper.y1() - upper.y0());
                long borne = 0;
                for (Stowed other : stowed) {
                    if (other.box().z1() == upper.z0()) {
                        borne += areaOn(upper, other.box());
                    }
                }
                if (borne != base) {
                    faults.add("Piece " + (i + 1) + " rests on " + borne + " of its base of " + base + ".");
                }
            }
        }
    }

    static long areaOn(Box upper, Box lower) {
        return Math.max(0, length(upper.x0(), upper.x1(), lower.x0(), lower.x1()))
                * Math.max(0, length(upper.y0(), upper.y1(), lower.y0(), lower.y1()));
    }
}
