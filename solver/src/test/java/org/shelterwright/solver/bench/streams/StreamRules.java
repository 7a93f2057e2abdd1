package org.shelterwright.solver.bench.streams;

import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_HARD;
import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_MEDIUM;
import static org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore.ONE_SOFT;
import static org.optaplanner.core.api.score.stream.ConstraintCollectors.sumLong;

import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.Joiners;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.shelterwright.solver.fit.model.PairTerms;
import org.shelterwright.solver.fit.model.WishTerm;

/**
 * The rules of the search as constraint streams, on the same terms and in the same amounts (µm). That fixings land on
 * holes, and units touch their surface, is true by the choice of the candidates.
 */
public final class StreamRules implements ConstraintProvider {
    /** What a hole that two units need counts (µm). */
    private static final int SHARED_HOLE = 20_000;

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        BiConstraintStream<StreamUnit, StreamUnit> pairs = factory.forEachUniquePair(
                StreamUnit.class, Joiners.overlapping(StreamUnit::reachFrom, StreamUnit::reachTo));
        return new Constraint[] {
            pairs.filter((a, b) -> overlap(a, b) > 0)
                    .penalizeLong(ONE_HARD, StreamRules::overlap)
                    .asConstraint("overlap"),
            pairs.filter((a, b) -> holes(a, b) > 0)
                    .penalizeLong(ONE_HARD, (a, b) -> SHARED_HOLE * holes(a, b))
                    .asConstraint("one bolt per hole"),
            pairs.filter((a, b) -> zones(a, b) > 0)
                    .penalizeLong(ONE_MEDIUM, StreamRules::zones)
                    .asConstraint("zones free"),
            factory.forEach(StreamUnit.class)
                    .join(StreamPlan.Room.class)
                    .filter((unit, room) -> outside(unit, room) > 0)
                    .penalizeLong(ONE_HARD, StreamRules::outside)
                    .asConstraint("inside"),
            factory.forEach(StreamUnit.class)
                    .join(StreamPlan.Room.class)
                    .filter((unit, room) -> zonesOutside(unit, room) > 0)
                    .penalizeLong(ONE_MEDIUM, StreamRules::zonesOutside)
                    .asConstraint("zones inside"),
            factory.forEach(StreamUnit.class)
                    .groupBy(sumLong(StreamUnit::grams), sumLong(StreamUnit::momentY), sumLong(StreamUnit::momentZ))
                    .join(StreamPlan.Room.class)
                    .penalizeLong(
                            ONE_SOFT,
                            (mass, y, z, room) -> mass == 0 ? 0 : Math.abs(y / mass - room.middle()) + z / mass / 2)
                    .asConstraint("mass in the middle and low"),
            factory.forEach(WishTerm.class)
                    .join(StreamUnit.class, Joiners.equal(WishTerm::a, StreamUnit::number))
                    .join(StreamUnit.class, Joiners.equal((wish, a) -> wish.b(), StreamUnit::number))
                    .penalizeLong(
                            ONE_SOFT,
                            (wish, a, b) ->
                                    wish.shortfall(a.option(), a.x(), a.y(), a.z(), b.option(), b.x(), b.y(), b.z()))
                    .asConstraint("wishes"),
        };
    }

    private static long overlap(StreamUnit a, StreamUnit b) {
        return PairTerms.overlap(
                a.option().station(), b.option().station(), b.x() - a.x(), b.y() - a.y(), b.z() - a.z());
    }

    private static long holes(StreamUnit a, StreamUnit b) {
        return PairTerms.sharedHoles(a.option(), b.option(), b.x() - a.x(), b.y() - a.y(), b.z() - a.z());
    }

    private static long zones(StreamUnit a, StreamUnit b) {
        return kept(a, b) + kept(b, a);
    }

    private static long kept(StreamUnit owner, StreamUnit intruder) {
        return PairTerms.zonesFree(
                owner.option().station(),
                intruder.option().station(),
                intruder.option().seat(),
                false,
                intruder.x() - owner.x(),
                intruder.y() - owner.y(),
                intruder.z() - owner.z());
    }

    private static long outside(StreamUnit unit, StreamPlan.Room room) {
        return room.problem().bodyTerms().outside(unit.option().station(), unit.x(), unit.y(), unit.z());
    }

    private static long zonesOutside(StreamUnit unit, StreamPlan.Room room) {
        return room.problem().bodyTerms().zonesInside(unit.option().station(), unit.x(), unit.y(), unit.z());
    }
}
