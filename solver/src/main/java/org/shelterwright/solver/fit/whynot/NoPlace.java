package org.shelterwright.solver.fit.whynot;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Slot;

/** Units that have no anchor at all, with the reason that can be told. */
final class NoPlace {
    private final FitProblem problem;

    NoPlace(FitProblem problem) {
        this.problem = problem;
    }

    List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        for (Slot slot : problem.unmountable()) {
            String reason = reason(slot);
            if (!reasons.contains(reason)) {
                reasons.add(reason);
            }
        }
        return reasons;
    }

    private String reason(Slot slot) {
        Item item = slot.item();
        String name = slot.unit().name();
        Size inside = problem.inside();
        if (item.size().z() > inside.z()) {
            return name + " is " + mm(item.size().z()) + " high, but the body is only " + mm(inside.z())
                    + " high inside: take a lower item or a higher body.";
        }
        boolean fitsTurned = item.turns().stream().anyMatch(turn -> fits(turn.apply(item.size()), inside));
        if (!fitsTurned) {
            return name + " measures " + mm(item.size().x()) + " by "
                    + mm(item.size().y()) + ", but the body is only "
                    + mm(inside.x()) + " by " + mm(inside.y()) + " inside"
                    + (item.turns().size() < QuarterTurn.values().length ? " for the turns that it allows" : "")
                    + ": take a smaller item or a larger body.";
        }
        Set<Surface> surfaces = item.mounting().surfaces();
        if (surfaces.stream().allMatch(surface -> surface == Surface.ON_UNIT || surface == Surface.UNDER_UNIT)) {
            return name + " stands on or hangs under other units only, but none in the brief has a support that is"
                    + " large enough for it: add one, or allow another surface.";
        }
        String where = surfaces.stream().sorted().map(Wording::surface).collect(Collectors.joining(" or "));
        return item.fixings().isEmpty() || item.mounting().loose()
                ? name + " finds no place on " + where + " that its heights and the body's own parts leave."
                : name + " has no place on " + where + " at which all its "
                        + Wording.count(item.fixings().size(), "fixing")
                        + " land on hard points clear of the body's own parts: add hard points, or change its"
                        + " fixings.";
    }

    private static boolean fits(Size size, Size inside) {
        return size.x() <= inside.x() && size.y() <= inside.y();
    }

    private static String mm(int micrometres) {
        return Lengths.format(micrometres) + " mm";
    }
}
