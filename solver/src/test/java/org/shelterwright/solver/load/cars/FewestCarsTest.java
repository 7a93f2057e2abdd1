package org.shelterwright.solver.load.cars;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.Cargoes;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.load.audit.LoadAudit;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Practice;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.model.Upright;

class FewestCarsTest {
    private static CarsResult load(LoadProblem problem) {
        return new FewestCars(new StandardLoader()).load(problem, 1, Budget.moves(20_000), new StopSignal());
    }

    @Test
    void everythingIsLoadedAndEveryCarHolds() {
        LoadProblem one = Cargoes.of(3, 6, Support.FULL);
        LoadProblem problem = one.withKinds(one.kinds().stream()
                .map(kind -> kind.withCount(3 * kind.count()))
                .toList());

        CarsResult result = load(problem);

        assertThat(result.leftOver()).isEmpty();
        assertThat(result.pieces()).isEqualTo(problem.pieces());
        assertThat(result.loads())
                .allSatisfy(load -> assertThat(LoadAudit.of(problem, load)).isEmpty());
        assertThat(result.loads().size()).isBetween(result.atLeast(), result.atLeast() + 1);
    }

    @Test
    void endsWhereTheBoundIsReached() {
        LoadProblem problem = LoadProblem.of(
                new Size(100, 60, 50),
                List.of(CargoKind.of("a", new Size(50, 60, 50), Upright.AS_IS, 9)),
                Support.FULL);

        CarsResult result = load(problem);

        assertThat(result.atLeast()).isEqualTo(5);
        assertThat(result.loads()).hasSize(5);
    }

    @Test
    void boundsTellWhyNoFewerWillDo() {
        Size room = new Size(100, 60, 50);
        CargoKind large =
                CargoKind.of("large", new Size(51, 52, 26), Upright.AS_IS, 4).withMass(10);
        LoadProblem sizes = LoadProblem.of(room, List.of(large), Support.FULL);

        assertThat(LeastCars.of(sizes)).as("two of them overlap in any car").isEqualTo(4);
        CargoKind small =
                CargoKind.of("small", new Size(10, 10, 10), Upright.ANY, 10).withMass(10);
        LoadProblem masses = LoadProblem.of(room, List.of(small), Support.FULL).with(Practice.NONE.withMassLimit(35));
        assertThat(LeastCars.of(masses)).as("100 kg at 35 kg a car").isEqualTo(3);
        assertThat(load(masses).loads()).hasSize(4).as("three pieces a car");
    }

    @Test
    void whatFitsNoCarIsNamed() {
        LoadProblem problem = LoadProblem.of(
                new Size(100, 60, 50),
                List.of(
                        CargoKind.of("mast", new Size(120, 10, 10), Upright.AS_IS, 1),
                        CargoKind.of("crate", new Size(50, 60, 50), Upright.AS_IS, 1)),
                Support.FULL);

        CarsResult result = load(problem);

        assertThat(result.leftOver()).containsExactly("mast");
        assertThat(result.loads()).hasSize(1);
        assertThat(result.loads().get(0).stowed().get(0).kind()).isEqualTo(1);
    }
}
