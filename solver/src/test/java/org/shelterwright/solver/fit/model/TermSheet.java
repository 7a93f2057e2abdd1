package org.shelterwright.solver.fit.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToIntFunction;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.layouts.brief.UnitSpec;

/** Sums of the compiled terms by the id of their limit (µm, holes times 1000), put together as the ledger does. */
final class TermSheet {
    private final FitProblem problem;
    private final Spot[] spots;
    private final Map<String, Long> sums = new LinkedHashMap<>();

    private TermSheet(FitProblem problem, Spot[] spots) {
        this.problem = problem;
        this.spots = spots;
    }

    static Map<String, Long> of(FitProblem problem, Spot[] spots) {
        TermSheet sheet = new TermSheet(problem, spots);
        List<UnitSpec> units = problem.scene().brief().units();
        for (int i = 0; i < units.size(); i++) {
            sheet.own(units.get(i).id());
            for (int j = i + 1; j < units.size(); j++) {
                sheet.pair(units.get(i).id(), units.get(j).id());
            }
        }
        return sheet.sums;
    }

    private void own(String unit) {
        BodyTerms body = problem.bodyTerms();
        add("fit.inside", worst(s -> at(unit, s).term((o, x, y, z) -> body.outside(o.shape(s), x, y, z))));
        for (int k = 0; k < body.intrusions(); k++) {
            int n = k;
            add("fit.intrusion", worst(s -> at(unit, s).term((o, x, y, z) -> body.intrusion(n, o.shape(s), x, y, z))));
        }
        for (int k = 0; k < body.swings(); k++) {
            int n = k;
            add(
                    "access.opening-swing",
                    worst(s -> at(unit, s).term((o, x, y, z) -> body.doorBlocked(n, o.shape(s), x, y, z)))
                            + at(unit, Situation.ON_STATION)
                                    .term((o, x, y, z) -> body.exitCrossed(n, o.station(), x, y, z)));
        }
        add("access.zone-inside", worst(s -> at(unit, s).term((o, x, y, z) -> body.zonesInside(o.shape(s), x, y, z))));
    }

    private void pair(String a, String b) {
        add(
                "fit.overlap",
                worst(s -> at(a, s).with(
                                at(b, s), (oa, ob, x, y, z) -> PairTerms.overlap(oa.shape(s), ob.shape(s), x, y, z))));
        add(
                "fit.shared-hole",
                1000L * worst(s -> s == Situation.ON_STATION ? 0 : at(a, s).with(at(b, s), PairTerms::sharedHoles)));
        add("access.zone-free", zones(a, b) + zones(b, a));
        At one = at(a, Situation.ON_STATION);
        At other = at(b, Situation.ON_STATION);
        add("access.seats-apart", one.with(other, PairTerms::seatsApart));
        add("access.exit-zone", one.with(other, PairTerms::exitsCrossed));
        add(
                "cables.plug-free",
                one.with(other, (o, i, x, y, z) -> PairTerms.plugsFree(o.station(), i.station(), x, y, z))
                        + other.with(one, (o, i, x, y, z) -> PairTerms.plugsFree(o.station(), i.station(), x, y, z)));
    }

    private long zones(String owner, String intruder) {
        return worst(s -> {
            Option.Berth berth = at(intruder, s).option().berth();
            boolean onTop = berth != null
                    && berth.slot() == problem.slotOf(owner, s)
                    && at(intruder, s).option().surface() == Surface.ON_UNIT;
            return at(owner, s)
                    .with(
                            at(intruder, s),
                            (o, i, x, y, z) -> PairTerms.zonesFree(o.shape(s), i.shape(s), i.seat(), onTop, x, y, z));
        });
    }

    private void add(String limit, long amount) {
        sums.merge(limit, amount, Long::sum);
    }

    private static int worst(ToIntFunction<Situation> measure) {
        return Math.max(measure.applyAsInt(Situation.ON_STATION), measure.applyAsInt(Situation.ON_THE_ROAD));
    }

    private At at(String unit, Situation situation) {
        int slot = problem.slotOf(unit, situation);
        Spot spot = Objects.requireNonNull(spots[slot]);
        return new At(problem.slot(slot).options().get(spot.option()), spot);
    }

    private interface OwnTerm {
        int at(Option option, int x, int y, int z);
    }

    private interface PairTerm {
        int at(Option a, Option b, int dx, int dy, int dz);
    }

    private record At(Option option, Spot spot) {
        int term(OwnTerm term) {
            return term.at(option, spot.x(), spot.y(), spot.z());
        }

        int with(At other, PairTerm term) {
            return term.at(
                    option,
                    other.option,
                    other.spot.x() - spot.x(),
                    other.spot.y() - spot.y(),
                    other.spot.z() - spot.z());
        }
    }
}
