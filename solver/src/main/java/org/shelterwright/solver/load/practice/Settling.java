package org.shelterwright.solver.load.practice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;

/** Brings a load that was found into the form that it is offered in. */
public final class Settling {
    private Settling() {}

    /** Takes out groups of which something is missing, stands the whole as its balance asks, and orders its pieces. */
    public static Load of(LoadProblem problem, Load found) {
        Load whole = withoutBrokenGroups(problem, found);
        Balance balance = new Balance(problem);
        if (!balance.asked() || whole.stowed().isEmpty()) {
            return Sequence.of(problem, whole);
        }
        Balance.Stand stand = balance.best(new Moments(problem).of(whole));
        return Sequence.of(
                problem,
                new Load(whole.stowed().stream()
                        .map(one -> new Stowed(one.kind(), moved(one.box(), stand, problem)))
                        .toList()));
    }

    private static Box moved(Box box, Balance.Stand stand, LoadProblem problem) {
        int x0 = stand.mirrorX() ? problem.room().x() - box.x1() : box.x0();
        int y0 = stand.mirrorY() ? problem.room().y() - box.y1() : box.y0();
        return box.moved(x0 - box.x0() + stand.shiftX(), y0 - box.y0() + stand.shiftY(), 0);
    }

    private static Load withoutBrokenGroups(LoadProblem problem, Load found) {
        List<Stowed> left = new ArrayList<>(found.stowed());
        boolean supported = problem.support() == Support.FULL;
        while (true) {
            Set<String> broken = broken(problem, left);
            if (broken.isEmpty()) {
                return new Load(left);
            }
            List<Stowed> kept = new ArrayList<>();
            List<Stowed> out = new ArrayList<>();
            for (Stowed one : left) {
                String group = problem.kinds().get(one.kind()).together();
                boolean goes = (group != null && broken.contains(group))
                        || (supported && out.stream().anyMatch(lower -> stands(one.box(), lower.box())));
                (goes ? out : kept).add(one);
            }
            left = kept;
        }
    }

    /** Whether a piece stands above another; pieces come from the lowest up. */
    private static boolean stands(Box upper, Box lower) {
        return upper.z0() >= lower.z1()
                && upper.x0() < lower.x1()
                && lower.x0() < upper.x1()
                && upper.y0() < lower.y1()
                && lower.y0() < upper.y1();
    }

    /** Groups of which something is in and something is not. */
    private static Set<String> broken(LoadProblem problem, List<Stowed> stowed) {
        Map<String, Integer> missing = new HashMap<>();
        Set<String> present = new HashSet<>();
        for (CargoKind kind : problem.kinds()) {
            if (kind.together() != null) {
                missing.merge(kind.together(), kind.count(), Integer::sum);
            }
        }
        for (Stowed one : stowed) {
            String group = problem.kinds().get(one.kind()).together();
            if (group != null) {
                present.add(group);
                missing.merge(group, -1, Integer::sum);
            }
        }
        present.removeIf(group -> missing.getOrDefault(group, 0) == 0);
        return present;
    }
}
