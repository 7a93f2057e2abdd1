package org.shelterwright.solver.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.model.Upright;

class StandardLoaderTest {
    private static final LoadObserver DEAF = progress -> {};

    private static LoadResult load(LoadProblem problem, long seed, long moves) {
        return new StandardLoader()
                .load(LoadRequest.single(problem, seed, Budget.moves(moves)), DEAF, new StopSignal());
    }

    @ParameterizedTest
    @CsvSource({"1, 3, FULL, 0.86", "2, 10, FULL, 0.88", "3, 40, FULL, 0.86", "4, 3, NONE, 0.88", "5, 20, NONE, 0.88"})
    void fillsTheRoomWithoutAFault(long seed, int kinds, Support support, double least) {
        LoadResult result = load(Cargoes.of(seed, kinds, support), seed, 25_000);

        assertThat(result.faults()).as("seed %d", seed).isEmpty();
        assertThat(result.share()).as("seed %d", seed).isGreaterThan(least);
    }

    @Test
    void fillsARoomWhollyThatCutsWithoutWaste() {
        LoadProblem problem = LoadProblem.of(
                new Size(600, 240, 220),
                List.of(
                        CargoKind.of("a", new Size(60, 40, 55), Upright.AS_IS, 120),
                        CargoKind.of("b", new Size(30, 80, 55), Upright.AS_IS, 120)),
                Support.FULL);

        LoadResult result = load(problem, 1, 20_000);

        assertThat(result.share()).isEqualTo(1);
    }

    @Test
    void loadsEverythingIfThereIsRoom() {
        LoadProblem whole = Cargoes.of(7, 8, Support.FULL);
        LoadProblem few = whole.withKinds(
                whole.kinds().stream().map(kind -> kind.withCount(2)).toList());

        LoadResult result = load(few, 1, 5_000);

        assertThat(result.load().stowed()).hasSize(few.pieces());
    }

    @Test
    void worksInMicrometresAsInCentimetres() {
        LoadProblem small = Cargoes.of(11, 8, Support.FULL);
        LoadProblem large = LoadProblem.of(
                scaled(small.room()),
                small.kinds().stream()
                        .map(kind -> CargoKind.of(kind.name(), scaled(kind.size()), kind.upright(), kind.count()))
                        .toList(),
                Support.FULL);

        LoadResult result = load(large, 1, 15_000);

        assertThat(result.faults()).isEmpty();
        assertThat(result.share()).isGreaterThan(0.86);
    }

    private static Size scaled(Size size) {
        return new Size(size.x() * 10_000, size.y() * 10_000, size.z() * 10_000);
    }

    @Test
    void sameSeedAndMovesGiveTheSameLoadOnAnyNumberOfThreads() {
        LoadProblem problem = Cargoes.of(5, 15, Support.FULL);

        LoadResult one = new StandardLoader()
                .load(new LoadRequest(problem, 9, Budget.moves(15_000), 3, 1), DEAF, new StopSignal());
        LoadResult three = new StandardLoader()
                .load(new LoadRequest(problem, 9, Budget.moves(15_000), 3, 3), DEAF, new StopSignal());

        assertThat(three.load()).isEqualTo(one.load());
        assertThat(three.moves()).isEqualTo(one.moves());
    }

    @Test
    void stopKeepsTheBestSoFar() {
        StopSignal stop = new StopSignal();
        List<Double> heard = new ArrayList<>();

        LoadResult result = new StandardLoader()
                .load(
                        LoadRequest.single(Cargoes.of(6, 12, Support.FULL), 1, Budget.time(Duration.ofMinutes(5))),
                        progress -> {
                            heard.add(progress.share());
                            stop.stop();
                        },
                        stop);

        assertThat(heard).isNotEmpty();
        assertThat(result.share()).isGreaterThan(0.7);
        assertThat(result.elapsed()).isLessThan(Duration.ofMinutes(1));
    }

    @Test
    void whateverTheBudgetThereIsALoad() {
        StopSignal stop = new StopSignal();
        stop.stop();

        LoadResult result = new StandardLoader()
                .load(LoadRequest.single(Cargoes.of(8, 30, Support.FULL), 1, Budget.moves(1)), DEAF, stop);

        assertThat(result.faults()).isEmpty();
        assertThat(result.share()).isGreaterThan(0.7);
    }

    @Test
    void nothingFitsThatIsLargerThanTheRoom() {
        LoadProblem problem = LoadProblem.of(
                new Size(100, 100, 100),
                List.of(CargoKind.of("rod", new Size(101, 1, 1), Upright.AS_IS, 5)),
                Support.FULL);

        assertThat(load(problem, 1, 100).load().stowed()).isEmpty();
    }
}
