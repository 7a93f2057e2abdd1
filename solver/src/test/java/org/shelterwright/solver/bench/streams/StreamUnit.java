package org.shelterwright.solver.bench.streams;

import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.valuerange.CountableValueRange;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.domain.variable.PlanningVariable;
import org.shelterwright.solver.bench.Lattice;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;

/** The planning entity: one unit with its spot. */
@PlanningEntity
public class StreamUnit {
    @PlanningId
    private int number;

    private @Nullable LatticeRange range;
    private @Nullable Slot slot;

    @PlanningVariable(valueRangeProviderRefs = "spots")
    private @Nullable Spot spot;

    /** For the cloner. */
    public StreamUnit() {}

    StreamUnit(Lattice lattice, @Nullable Spot spot) {
        this.number = lattice.slot().index();
        this.slot = lattice.slot();
        this.range = new LatticeRange(lattice);
        this.spot = spot;
    }

    @ValueRangeProvider(id = "spots")
    public CountableValueRange<Spot> range() {
        return known(range);
    }

    public int number() {
        return number;
    }

    public @Nullable Spot getSpot() {
        return spot;
    }

    public void setSpot(@Nullable Spot changed) {
        this.spot = changed;
    }

    Option option() {
        return known(slot).options().get(known(spot).option());
    }

    int x() {
        return known(spot).x();
    }

    int y() {
        return known(spot).y();
    }

    int z() {
        return known(spot).z();
    }

    int reachFrom() {
        return x() + option().station().reach()[0];
    }

    int reachTo() {
        return x() + option().station().reach()[3];
    }

    long grams() {
        Double massKg = known(slot).item().mass().massKg();
        return massKg == null ? 0 : Math.round(massKg * 1000);
    }

    long momentY() {
        return grams() * (y() + option().centre().y());
    }

    long momentZ() {
        return grams() * (z() + option().centre().z());
    }

    private static <T> T known(@Nullable T value) {
        if (value == null) {
            throw new IllegalStateException("The unit is not set up.");
        }
        return value;
    }
}
