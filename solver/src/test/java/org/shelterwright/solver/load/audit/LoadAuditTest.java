package org.shelterwright.solver.load.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.Apart;
import org.shelterwright.solver.load.model.BalanceLine;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.model.Upright;

class LoadAuditTest {
    private static final CargoKind CRATE =
            CargoKind.of("crate", new Size(10, 8, 6), Upright.AS_IS, 3).withMass(5);
    private static final CargoKind SLAB = CargoKind.of("slab", new Size(20, 8, 2), Upright.ANY, 2)
            .withMass(4)
            .withTopLoad(6)
            .forStop(2);
    private static final LoadProblem PROBLEM = LoadProblem.of(new Size(40, 16, 20), List.of(CRATE, SLAB), Support.FULL);

    private static Stowed crate(int x, int y, int z) {
        return new Stowed(0, new Box(x, y, z, x + 10, y + 8, z + 6));
    }

    private static Stowed slab(int x, int y, int z) {
        return new Stowed(1, new Box(x, y, z, x + 20, y + 8, z + 2));
    }

    private static List<String> faults(LoadProblem problem, Stowed... stowed) {
        return LoadAudit.of(problem, new Load(Arrays.asList(stowed)));
    }

    private static LoadProblem asking(Practice practice) {
        return PROBLEM.with(practice);
    }

    @Test
    void findsNothingWrongWithASoundLoad() {
        assertThat(faults(PROBLEM, crate(0, 0, 0), crate(10, 0, 0), slab(0, 0, 6), crate(0, 0, 8)))
                .isEmpty();
    }

    @Test
    void findsWhatIsOutside() {
        assertThat(faults(PROBLEM, crate(31, 0, 0))).containsExactly("Piece 1 is not inside the room.");
    }

    @Test
    void findsWhatOverlaps() {
        assertThat(faults(PROBLEM, crate(0, 0, 0), crate(9, 0, 0))).containsExactly("Pieces 1 and 2 overlap.");
    }

    @Test
    void findsTooManyPieces() {
        assertThat(faults(PROBLEM, crate(0, 0, 0), crate(10, 0, 0), crate(20, 0, 0), crate(30, 0, 0)))
                .containsExactly("4 pieces of crate are loaded, but there are 3.");
    }

    @Test
    void findsAStanceThatIsNotAllowed() {
        assertThat(faults(PROBLEM, new Stowed(0, new Box(0, 0, 0, 10, 6, 8))))
                .containsExactly("A piece of crate has the extents 10 x 6 x 8, in which it may not stand.");
        assertThat(faults(PROBLEM, new Stowed(0, new Box(0, 0, 0, 8, 10, 6)))).isEmpty();
        assertThat(faults(PROBLEM, new Stowed(1, new Box(0, 0, 0, 2, 8, 20)))).isEmpty();
    }

    @Test
    void findsABaseThatOverhangsByOneUnit() {
        assertThat(faults(PROBLEM, crate(0, 0, 0), crate(11, 0, 0), slab(0, 0, 6)))
                .containsExactly("Piece 3 rests on 152 of its base of 160.");
    }

    @Test
    void letsPiecesHangWhereNoSupportIsAsked() {
        LoadProblem free =
                LoadProblem.of(PROBLEM.room(), List.of(CRATE.withTopLoad(Double.POSITIVE_INFINITY)), Support.NONE);

        assertThat(faults(free, crate(0, 0, 7))).isEmpty();
    }

    @Test
    void findsSpaceKeptFree() {
        LoadProblem problem = asking(Practice.NONE.withKeptFree(List.of(new Box(0, 0, 0, 4, 16, 3))));

        assertThat(faults(problem, crate(3, 0, 0))).containsExactly("Piece 1 stands in space that is to be kept free.");
    }

    @Test
    void findsTooMuchMass() {
        assertThat(faults(asking(Practice.NONE.withMassLimit(9)), crate(0, 0, 0), crate(10, 0, 0)))
                .containsExactly("The load of 10.0 kg is above the limit of 9.0 kg.");
    }

    @Test
    void findsACentreOfMassOutsideItsWindow() {
        LoadProblem problem = asking(
                Practice.NONE.withBalance(List.of(BalanceLine.centreAbove("centre at or behind 6", Axis.X, 6, 100))));

        assertThat(faults(problem, crate(0, 0, 0)))
                .containsExactly("Before stop 1: centre at or behind 6 does not hold.");
        assertThat(faults(problem, crate(1, 0, 0))).isEmpty();
    }

    @Test
    void findsAPieceThatBearsTooMuch() {
        assertThat(faults(PROBLEM, slab(0, 0, 0), crate(0, 0, 2), crate(10, 0, 2)))
                .containsExactly("On piece 1 (slab) rest 10.0 kg; it bears 6.0 kg.");
        assertThat(faults(PROBLEM, slab(0, 0, 0), slab(20, 0, 0), crate(15, 0, 2)))
                .isEmpty();
    }

    @Test
    void handsLoadsDownThroughEverythingBelow() {
        assertThat(faults(PROBLEM, slab(0, 0, 0), slab(0, 0, 2), crate(0, 0, 4)))
                .containsExactly("On piece 1 (slab) rest 9.0 kg; it bears 6.0 kg.");
    }

    @Test
    void findsWhatDoesNotPassTheDoor() {
        assertThat(faults(asking(Practice.NONE.withDoor(7, 20)), crate(0, 0, 0)))
                .containsExactly("Piece 1 does not pass the door as it stands.");
        assertThat(faults(asking(Practice.NONE.withDoor(8, 6)), crate(0, 0, 0))).isEmpty();
    }

    @Test
    void findsClassesTooNearEachOther() {
        LoadProblem problem = LoadProblem.of(
                        PROBLEM.room(), List.of(CRATE.ofClass("fuel"), SLAB.ofClass("food")), Support.FULL)
                .with(Practice.NONE.withApart(List.of(new Apart("fuel", "food", 5))));

        assertThat(faults(problem, crate(0, 0, 0), slab(14, 0, 0)))
                .containsExactly("crate and slab are too near each other.");
        assertThat(faults(problem, crate(0, 0, 0), slab(15, 0, 0))).isEmpty();
    }

    @Test
    void findsAGroupOfWhichSomethingIsMissing() {
        LoadProblem problem = LoadProblem.of(PROBLEM.room(), List.of(CRATE.inGroup("set"), SLAB), Support.FULL);

        assertThat(faults(problem, crate(0, 0, 0)))
                .containsExactly("1 of the 3 pieces of set are loaded, but they go together.");
        assertThat(faults(problem, slab(0, 0, 0))).isEmpty();
    }

    @Test
    void findsPiecesThatCannotComeOutAtTheirStop() {
        LoadProblem problem = asking(Practice.NONE.inOrderOfStops());

        assertThat(faults(problem, crate(0, 0, 0), slab(10, 0, 0)))
                .containsExactly("1 pieces cannot come out at stop 1.");
        assertThat(faults(problem, slab(0, 0, 0), crate(20, 0, 0), crate(0, 8, 0)))
                .isEmpty();
    }
}
