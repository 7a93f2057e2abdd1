package org.shelterwright.solver.load.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.Cargoes;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.LoadResult;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.load.model.Apart;
import org.shelterwright.solver.load.model.BalanceLine;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;

/** Each thing that practice asks is held by what the search finds; the check from scratch says so. */
class PracticeTest {
    private static LoadResult load(LoadProblem problem) {
        return new StandardLoader()
                .load(LoadRequest.single(problem, 1, Budget.moves(10_000)), progress -> {}, new StopSignal());
    }

    private static LoadProblem with(LoadProblem problem, java.util.function.IntFunction<CargoKind> kind) {
        List<CargoKind> kinds = new ArrayList<>();
        for (int k = 0; k < problem.kinds().size(); k++) {
            kinds.add(kind.apply(k));
        }
        return problem.withKinds(kinds);
    }

    private static LoadResult holds(LoadProblem problem, double least) {
        LoadResult result = load(problem);
        assertThat(result.faults()).isEmpty();
        assertThat(result.share()).isGreaterThan(least);
        return result;
    }

    @Test
    void massLimitIsHeldAndUsed() {
        LoadProblem problem = Cargoes.heavy(1, 10);
        double limit = 0.6
                * problem.kinds().stream()
                        .mapToDouble(k -> k.count() * k.massKg())
                        .sum();

        LoadResult result = holds(problem.with(Practice.NONE.withMassLimit(limit)), 0.64);

        assertThat(result.load().massKg(problem.kinds())).isBetween(0.97 * limit, limit);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void centreOfMassComesIntoItsWindow(long seed) {
        LoadProblem problem = Cargoes.heavy(seed, 10);
        double scale = 1e4 * problem.room().x();
        List<BalanceLine> window = List.of(
                BalanceLine.centreAbove("ahead", Axis.X, 284, scale),
                BalanceLine.centreBelow("behind", Axis.X, 303, scale),
                BalanceLine.centreAbove("right", Axis.Y, 115, scale),
                BalanceLine.centreBelow("left", Axis.Y, 118, scale));

        holds(problem.with(Practice.NONE.withBalance(window)), 0.85);
    }

    @Test
    void balanceHoldsAtEveryStop() {
        LoadProblem heavy = Cargoes.heavy(4, 12);
        LoadProblem problem = with(heavy, k -> heavy.kinds().get(k).forStop(1 + k % 2));
        List<BalanceLine> lines = List.of(
                BalanceLine.centreAbove("right", Axis.Y, 100, 1e6), BalanceLine.centreBelow("left", Axis.Y, 133, 1e6));

        holds(problem.with(Practice.NONE.inOrderOfStops().withBalance(lines)), 0.7);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5})
    void piecesComeOutInTheOrderOfStops(int stops) {
        LoadProblem plain = Cargoes.of(5, 15, Support.FULL);
        LoadProblem problem = with(plain, k -> plain.kinds().get(k).forStop(1 + k % stops));

        LoadResult result = holds(problem.with(Practice.NONE.inOrderOfStops()), 0.7);

        assertThat(result.load().stowed().stream()
                        .map(one -> problem.kinds().get(one.kind()).stop())
                        .distinct())
                .hasSize(stops);
    }

    @Test
    void piecesBearNoMoreThanTheyCan() {
        LoadProblem heavy = Cargoes.heavy(6, 12);
        LoadProblem problem = with(heavy, k -> heavy.kinds().get(k).withTopLoad(k % 3 == 0 ? 40 + 10 * k : 300));

        holds(problem, 0.6);
    }

    @Test
    void nothingStandsOnWhatIsFragile() {
        LoadProblem plain = Cargoes.of(7, 12, Support.FULL);
        LoadProblem problem = with(
                plain,
                k -> k % 4 == 0
                        ? plain.kinds().get(k).withTopLoad(0)
                        : plain.kinds().get(k));

        holds(problem, 0.7);
    }

    @Test
    void classesStayApart() {
        LoadProblem plain = Cargoes.of(8, 12, Support.FULL);
        LoadProblem problem = with(
                plain,
                k -> k == 0
                        ? plain.kinds().get(k).ofClass("fuel")
                        : k == 1
                                ? plain.kinds().get(k).ofClass("food")
                                : plain.kinds().get(k));

        holds(problem.with(Practice.NONE.withApart(List.of(new Apart("fuel", "food", 150)))), 0.8);
        LoadResult never =
                holds(problem.with(Practice.NONE.withApart(List.of(Apart.notTogether("fuel", "food")))), 0.7);
        assertThat(never.load().stowed().stream()
                        .map(one -> one.kind())
                        .filter(k -> k < 2)
                        .distinct())
                .hasSizeLessThan(2);
    }

    @Test
    void groupsGoWholeOrNotAtAll() {
        LoadProblem plain = Cargoes.of(9, 12, Support.FULL);
        LoadProblem problem = with(plain, k -> plain.kinds().get(k).inGroup("lot " + k / 2));

        holds(problem, 0.5);
    }

    @Test
    void spaceKeptFreeAndDoorsAreHeld() {
        LoadProblem plain = Cargoes.of(10, 12, Support.FULL);
        Practice asked = Practice.NONE
                .withKeptFree(List.of(new Box(200, 0, 0, 300, 30, 40), new Box(400, 0, 0, 405, 233, 220)))
                .withDoor(90, 100);

        holds(plain.with(asked), 0.6);
    }

    @Test
    void pinnedPiecesStayAndCarryOthers() {
        LoadProblem plain = Cargoes.of(12, 10, Support.FULL);
        Size size = plain.kinds().get(0).size();
        Stowed low = new Stowed(0, new Box(200, 60, 0, 200 + size.x(), 60 + size.y(), size.z()));
        Stowed high = new Stowed(0, low.box().moved(0, 0, size.z()));

        LoadResult result = holds(plain.with(Practice.NONE.withPinned(List.of(high, low))), 0.7);

        assertThat(result.load().stowed()).contains(low, high);
        assertThatThrownBy(() -> load(plain.with(Practice.NONE.withPinned(List.of(high)))))
                .hasMessageMatching(
                        "The pinned pieces cannot stay as they are: Piece 1 rests on 0 of its base of \\d+\\."
                                + " Unpin a piece, or pin what it stands on\\.");
    }

    @Test
    void piecesComeInTheOrderInWhichTheyCanBePutIn() {
        List<Stowed> stowed = load(Cargoes.of(13, 20, Support.FULL)).load().stowed();

        for (int i = 0; i < stowed.size(); i++) {
            Box box = stowed.get(i).box();
            Box way = box.swept(Axis.X, Cargoes.ROOM.x() - box.x1());
            assertThat(stowed.subList(0, i))
                    .as("piece %d slides in from the end, onto what is there", i + 1)
                    .noneMatch(other -> other.box().overlaps(way))
                    .noneMatch(other -> other.box().z0() >= box.z1()
                            && other.box()
                                    .moved(0, 0, box.z0() - other.box().z0())
                                    .overlaps(box));
        }
    }

    @Test
    void missingMassIsSaid() {
        LoadProblem plain = Cargoes.of(1, 3, Support.FULL);

        assertThatThrownBy(() -> plain.with(Practice.NONE.withMassLimit(100)))
                .hasMessage("The mass of K1 is missing, but limits on mass, balance or stacking need it."
                        + " Give it, or drop the limits.");
    }
}
