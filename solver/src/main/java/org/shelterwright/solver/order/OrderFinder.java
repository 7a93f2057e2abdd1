package org.shelterwright.solver.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.layout.BoltDownOrder.BroughtIn;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Blockers;
import org.shelterwright.layouts.ways.Passage;

/**
 * Finds an order of bringing in, if there is one, and chooses a good one. Deterministic. The limits on it are those of the
 * ledger: check the layout with the order before showing it.
 */
public final class OrderFinder {
    /** How many sets of units are kept after each step. */
    public static final int USUAL_WIDTH = 12;

    private final int width;

    public OrderFinder() {
        this(USUAL_WIDTH);
    }

    /** @param width how many sets of units are kept after each step; 1 is greedy */
    public OrderFinder(int width) {
        if (width < 1) {
            throw new IllegalArgumentException("The width must be 1 or more, but is " + width + ".");
        }
        this.width = width;
    }

    /**
     * Finds an order for all placed units of a scene.
     *
     * @param before what a person has set
     * @param fitters people who work at the same time
     */
    public FoundOrder find(Scene scene, List<Before> before, int fitters) {
        int count = scene.units().size();
        Removability removability = new Removability(scene, before);
        TakeOut taken = TakeOut.greedily(removability, count);
        Beam beam = new Beam(removability, new Preference(removability.ways()), width);
        List<Integer> chosen = beam.order(taken);
        List<BroughtIn> steps = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        BitSet gone = new BitSet();
        gone.set(0, count);
        gone.andNot(taken.rest());
        for (int i = 0; i < chosen.size(); i++) {
            PlacedUnit unit = scene.units().get(chosen.get(i));
            Passage passage = removability.ways().shortest(unit, gone);
            Opening opening = passage.opening();
            steps.add(new BroughtIn(unit.id(), opening == null ? null : opening.name()));
            reasons.add(reason(scene, removability, chosen, i));
            gone.clear(unit.index());
        }
        List<Stuck> stuck = stuck(scene, removability, taken.rest());
        List<String> circles = new ArrayList<>();
        new Circles(removability, before).among(taken.rest()).ifPresent(circles::add);
        List<String> handOnly = removability.exempt().stream()
                .mapToObj(unit -> scene.units().get(unit).id())
                .toList();
        return new FoundOrder(
                new BoltDownOrder(steps, before, fitters), reasons, stuck, circles, handOnly, removability.asked());
    }

    /** Why a unit is in where it is: what could not come in after it, or that it is heavy and low, or just near at hand. */
    private static String reason(Scene scene, Removability removability, List<Integer> order, int place) {
        PlacedUnit unit = scene.units().get(order.get(place));
        String host = unit.place(Situation.ON_STATION).host();
        if (host != null) {
            return "stands on " + scene.unit(host).map(PlacedUnit::name).orElse(host);
        }
        int hinders = firstThatHinders(removability, order, place);
        if (hinders < order.size()) {
            boolean inTheWay = !removability.free(unit.index(), upTo(order, hinders));
            return "before " + scene.units().get(order.get(hinders)).name()
                    + (inTheWay ? ", which would be in its way" : ", which would hide its fixings");
        }
        Double kg = unit.item().mass().massKg();
        return unit.item().mounting().loose()
                ? "loose: at the end"
                : kg != null && kg >= 60 ? "heavy: early while there is room" : "near what was bolted before it";
    }

    /** The place of the first after which a unit could no longer come in; found by halving, as more in the body only hinder more. */
    private static int firstThatHinders(Removability removability, List<Integer> order, int place) {
        int unit = order.get(place);
        int low = place + 1;
        int high = order.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            BitSet in = upTo(order, middle);
            if (removability.free(unit, in) && removability.undone(unit, in)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static BitSet upTo(List<Integer> order, int last) {
        BitSet in = new BitSet();
        order.subList(0, last + 1).forEach(in::set);
        return in;
    }

    private static List<Stuck> stuck(Scene scene, Removability removability, BitSet rest) {
        List<Stuck> stuck = new ArrayList<>();
        BitSet gone = new BitSet();
        gone.set(0, scene.units().size());
        gone.andNot(rest);
        rest.stream().forEach(index -> {
            PlacedUnit unit = scene.units().get(index);
            Optional<List<PlacedUnit>> blockers = Blockers.of(removability.ways(), unit, gone);
            if (blockers.isEmpty()) {
                stuck.add(new Stuck(
                        unit.id(),
                        List.of(),
                        unit.name() + " comes in through no opening, even with nothing else in the body."));
                return;
            }
            List<String> names = blockers.get().stream().map(PlacedUnit::name).toList();
            stuck.add(new Stuck(
                    unit.id(),
                    blockers.get().stream().map(PlacedUnit::id).toList(),
                    names.isEmpty()
                            ? unit.name() + " waits for " + waits(scene, removability, index, rest) + "."
                            : unit.name() + " does not come in past " + Wording.list(names)
                                    + ", which cannot come in after it" + " either. Move "
                                    + (names.size() == 1 ? "that one." : "one of them.")));
        });
        return stuck;
    }

    private static String waits(Scene scene, Removability removability, int unit, BitSet rest) {
        BitSet after = removability.after(unit);
        after.and(rest);
        List<String> names =
                after.stream().mapToObj(one -> scene.units().get(one).name()).toList();
        return names.isEmpty() ? "others" : Wording.list(names) + ", set to be in after it";
    }
}
