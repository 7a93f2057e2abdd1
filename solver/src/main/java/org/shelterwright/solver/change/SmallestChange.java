package org.shelterwright.solver.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.cable.WireEnd;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.insight.Worsening;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.revision.Reuse;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StopSignal;

/**
 * After the list changed: a layout that breaks no more than before and keeps the most drilled holes and cut cables. First everything stays
 * where it is. As long as that breaks something, the units concerned are loosened, then those nearest to them, and a search finds places
 * for these alone while all else is pinned. Then whatever was moved without need goes back. The same request gives the same layout.
 */
public final class SmallestChange {
    private static final int MOST_SEARCHES = 6;

    private final Checker checker;
    private final Fitter fitter;

    public SmallestChange(Checker checker, Fitter fitter) {
        this.checker = checker;
        this.fitter = fitter.withoutReasons();
    }

    /** Looks for the smallest change; of what was found, that with the fewest newly broken rows, then the most kept. */
    public ChangeResult find(ChangeRequest request, StopSignal stop) {
        Worsening worsening = new Worsening(checker.check(request.before()));
        Settled best = Settled.of(checker, request.asked());
        List<Row> broken = newlyBroken(worsening, best);
        Set<String> free = new LinkedHashSet<>(unplaced(request.asked()));
        Set<String> bestFree = Set.of();
        int searches = 0;
        while (!broken.isEmpty() && searches < MOST_SEARCHES && !stop.stopped()) {
            loosen(free, request.asked(), broken, best.layout(), searches);
            Settled found = searched(request, free, worsening, stop);
            searches++;
            List<Row> left = newlyBroken(worsening, found);
            if (left.size() < broken.size() || searches == 1 && left.size() <= broken.size()) {
                best = found;
                bestFree = Set.copyOf(free);
            }
            broken = newlyBroken(worsening, best);
            if (!left.isEmpty()) {
                free.addAll(unitsOf(left, request.asked()));
            }
        }
        if (broken.isEmpty() && searches > 0) {
            best = putBack(best, request, worsening);
        }
        return new ChangeResult(
                Revision.of(checker, request.before(), best.layout()),
                newlyBroken(worsening, best),
                List.copyOf(bestFree),
                searches);
    }

    private static List<Row> newlyBroken(Worsening worsening, Settled settled) {
        return worsening.all(settled.ledger());
    }

    private static List<String> unplaced(Layout layout) {
        return layout.brief().units().stream()
                .map(UnitSpec::id)
                .filter(id -> !layout.placements().containsKey(id))
                .toList();
    }

    private static List<String> unitsOf(List<Row> rows, Layout layout) {
        return rows.stream()
                .flatMap(row -> row.units().stream())
                .filter(id -> layout.brief().units().stream()
                        .anyMatch(unit -> unit.id().equals(id)))
                .distinct()
                .toList();
    }

    /** The units that broken rows name, then, search by search, more and more of those nearest to them; at the end all. */
    private void loosen(Set<String> free, Layout asked, List<Row> broken, Layout at, int searches) {
        free.addAll(unitsOf(broken, asked));
        List<String> all = asked.brief().units().stream().map(UnitSpec::id).toList();
        if (searches == MOST_SEARCHES - 1 || free.isEmpty()) {
            free.addAll(all);
            return;
        }
        if (searches > 0) {
            List<String> near = new Nearness(checker.scene(at)).nearest(free);
            free.addAll(near.subList(0, Math.min(near.size(), 1 << searches)));
        }
        free.removeIf(id -> pinnedByPerson(asked, id));
    }

    private static boolean pinnedByPerson(Layout layout, String unit) {
        Placement placement = layout.placements().get(unit);
        return placement != null && placement.pin().whole();
    }

    /** What a search finds while all but the free units, and all wires that do not end at one of them, are pinned. */
    private Settled searched(ChangeRequest request, Set<String> free, Worsening worsening, StopSignal stop) {
        Layout asked = request.asked();
        Map<String, Placement> placements = new LinkedHashMap<>();
        asked.placements().forEach((id, placement) -> {
            boolean carried = placement.station().host() != null
                    && free.contains(placement.station().host());
            placements.put(id, free.contains(id) || carried ? placement : placement.withPin(Pin.ALL));
        });
        Map<String, Route> routes = new LinkedHashMap<>();
        asked.routes().forEach((id, route) -> routes.put(id, ends(asked, id, free) ? route : route.withPinned(true)));
        Layout start = asked.withPlacements(placements).withRoutes(routes);
        FitResult result = fitter.fit(
                new FitRequest(start, request.seed(), Budget.moves(request.moves()), request.threads(), 1),
                progress -> {},
                stop);
        if (result.options().isEmpty()) {
            return Settled.of(checker, asked);
        }
        Layout found = unpinned(result.options().get(0).layout(), asked);
        Settled anew = Settled.of(checker, found);
        Settled packed = Settled.of(checker, found.withContents(asked.contents()));
        return newlyBroken(worsening, packed).size()
                        <= newlyBroken(worsening, anew).size()
                ? packed
                : anew;
    }

    private static boolean ends(Layout layout, String wire, Set<String> free) {
        for (Wire one : layout.brief().wires()) {
            if (one.id().equals(wire)) {
                return free.contains(WireEnd.owner(one.from())) || free.contains(WireEnd.owner(one.to()));
            }
        }
        return true;
    }

    /** With the pins that the person had set, and the order of before if it has all units. */
    private static Layout unpinned(Layout found, Layout asked) {
        Map<String, Placement> placements = new LinkedHashMap<>();
        found.placements().forEach((id, placement) -> {
            Placement old = asked.placements().get(id);
            placements.put(id, placement.withPin(old == null ? Pin.NONE : old.pin()));
        });
        Map<String, Route> routes = new LinkedHashMap<>();
        found.routes().forEach((id, route) -> {
            Route old = asked.routes().get(id);
            routes.put(id, route.withPinned(old != null && old.pinned()));
        });
        Layout layout = found.withPlacements(placements).withRoutes(routes);
        var order = asked.boltDown();
        boolean whole = order != null
                && asked.brief().units().stream().allMatch(unit -> order.units().contains(unit.id()));
        return whole ? layout.withBoltDown(order) : layout;
    }

    /** Puts back, one by one, each moved unit and each wire for which that breaks nothing and keeps more. */
    private Settled putBack(Settled found, ChangeRequest request, Worsening worsening) {
        Settled best = found;
        List<String> moved = new ArrayList<>();
        found.layout().placements().forEach((id, placement) -> {
            Placement old = request.asked().placements().get(id);
            if (old != null && !old.equals(placement)) {
                moved.add(id);
            }
        });
        for (String id : moved) {
            Placement old = request.asked().placements().get(id);
            if (old != null) {
                Layout back = withOldRoutes(best.layout().with(old), request.asked(), id);
                Settled settled = Settled.of(checker, back);
                if (newlyBroken(worsening, settled).isEmpty() && keeps(request, settled) >= keeps(request, best)) {
                    best = settled;
                }
            }
        }
        return best;
    }

    private static Layout withOldRoutes(Layout layout, Layout asked, String unit) {
        Map<String, Route> routes = new LinkedHashMap<>(layout.routes());
        asked.routes().forEach((id, route) -> {
            if (ends(asked, id, Set.of(unit))) {
                routes.put(id, route);
            }
        });
        return layout.withRoutes(routes);
    }

    /** Share of holes and of cables kept, together. */
    private double keeps(ChangeRequest request, Settled settled) {
        Reuse reuse = Reuse.of(checker.scene(request.before()), checker.scene(settled.layout()));
        return reuse.holeShare() + reuse.cableShare();
    }
}
