package org.shelterwright.solver.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.audit.LoadAudit;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.model.Upright;

class GroupChoicesTest {
    private static CargoKind cubes(String name, int count, String group) {
        return CargoKind.of(name, new Size(10, 10, 10), Upright.AS_IS, count).inGroup(group);
    }

    /** A room of 100 cubes and groups of 60, 50 and 35: the best are 60 + 35, and 50 + 35 next. */
    @Test
    void theGroupsThatFillTheRoomMostComeFirst() {
        LoadProblem problem = LoadProblem.of(
                new Size(100, 100, 10),
                List.of(cubes("a", 60, "A"), cubes("b", 50, "B"), cubes("c", 35, "C")),
                Support.FULL);

        List<GroupChoices.Choice> choices = GroupChoices.of(problem, 0);

        assertThat(choices.get(0).kinds()).containsExactly(0, 2);
        assertThat(choices.get(1).kinds()).containsExactly(1, 2);
        assertThat(choices).isSortedAccordingTo(Comparator.comparingDouble(choice -> -choice.volume()));
        assertThat(GroupChoices.of(problem, 95_000)).isEmpty();
    }

    @Test
    void theSearchTakesThemAndLosesNothingOfThem() {
        LoadProblem problem = LoadProblem.of(
                new Size(100, 100, 10),
                List.of(cubes("a", 60, "A"), cubes("b", 50, "B"), cubes("c", 35, "C")),
                Support.FULL);

        LoadResult result = new StandardLoader()
                .load(LoadRequest.single(problem, 1, Budget.moves(20_000)), progress -> {}, new StopSignal());

        assertThat(result.share()).isCloseTo(0.95, within(1e-9));
        assertThat(result.load().stowed()).extracting(Stowed::kind).containsOnly(0, 2);
        assertThat(result.faults()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void manyGroupsAreChosenTooAndEveryLoadHolds(long seed) {
        Random random = new Random(seed);
        List<CargoKind> kinds = new ArrayList<>();
        for (int k = 0; k < 40; k++) {
            Size size = new Size(20 + random.nextInt(30), 20 + random.nextInt(30), 20 + random.nextInt(30));
            kinds.add(CargoKind.of("k" + k, size, Upright.AS_IS, 1 + random.nextInt(8))
                    .inGroup("lot " + k / 2));
        }
        LoadProblem problem = LoadProblem.of(new Size(220, 110, 110), kinds, Support.FULL);

        List<GroupChoices.Choice> choices = GroupChoices.of(problem, 0);
        LoadResult result = new StandardLoader()
                .load(LoadRequest.single(problem, seed, Budget.moves(8_000)), progress -> {}, new StopSignal());

        assertThat(choices).isNotEmpty().allMatch(choice -> choice.volume() <= 0.95 * problem.roomVolume());
        assertThat(LoadAudit.of(problem, result.load())).as("seed " + seed).isEmpty();
        assertThat(result.share()).isPositive();
    }
}
