package org.shelterwright.solver.bench.streams;

import java.util.Iterator;
import java.util.Random;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.impl.domain.valuerange.AbstractCountableValueRange;
import org.shelterwright.solver.bench.Lattice;
import org.shelterwright.solver.fit.model.Spot;

/** A lattice as the value range of the planning engine. */
final class LatticeRange extends AbstractCountableValueRange<Spot> {
    private static final long serialVersionUID = 1;

    private final transient Lattice lattice;

    LatticeRange(Lattice lattice) {
        this.lattice = lattice;
    }

    @Override
    public long getSize() {
        return lattice.size();
    }

    @Override
    public Spot get(long index) {
        return lattice.spot(index);
    }

    @Override
    public Iterator<Spot> createOriginalIterator() {
        return LongStream.range(0, lattice.size()).mapToObj(lattice::spot).iterator();
    }

    @Override
    public boolean contains(@Nullable Spot spot) {
        return spot != null && lattice.contains(spot);
    }

    @Override
    public Iterator<Spot> createRandomIterator(Random random) {
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                return lattice.size() > 0;
            }

            @Override
            public Spot next() {
                return lattice.spot(random.nextLong(lattice.size()));
            }
        };
    }
}
