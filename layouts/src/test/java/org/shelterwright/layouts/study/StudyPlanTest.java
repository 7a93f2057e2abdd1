package org.shelterwright.layouts.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StudyPlanTest {
    private static final String TWO_AXES = """
            {"id": "a", "settings": [{"id": "a1"}, {"id": "a2"}]},
            {"id": "b", "settings": [{"id": "b1"}, {"id": "b2"}, {"id": "b3"}]}
            """;

    private static StudyPlan plan(String axes, String more) {
        return StudyPlan.of(PostStudy.read(PostStudy.text(axes, more)));
    }

    @Test
    void takesEveryWayWithEverySeedTheLastAxisFastest() {
        StudyPlan plan = plan(TWO_AXES, "\"seeds\": {\"first\": 7, \"count\": 2}");

        assertThat(plan.count()).isEqualTo(12);
        assertThat(plan.leftOut()).isZero();
        assertThat(IntStream.rangeClosed(1, 12).mapToObj(plan::run).map(run -> run.ids() + " " + run.seed()))
                .containsExactly(
                        "{a=a1, b=b1} 7",
                        "{a=a1, b=b1} 8",
                        "{a=a1, b=b2} 7",
                        "{a=a1, b=b2} 8",
                        "{a=a1, b=b3} 7",
                        "{a=a1, b=b3} 8",
                        "{a=a2, b=b1} 7",
                        "{a=a2, b=b1} 8",
                        "{a=a2, b=b2} 7",
                        "{a=a2, b=b2} 8",
                        "{a=a2, b=b3} 7",
                        "{a=a2, b=b3} 8");
    }

    @Test
    void leavesOutRunsThatHaveAllNamedSettings() {
        StudyPlan plan = plan(TWO_AXES, "\"leaveOut\": [{\"when\": {\"a\": [\"a1\"], \"b\": [\"b1\", \"b3\"]}}]");

        assertThat(plan.count()).isEqualTo(4);
        assertThat(plan.leftOut()).isEqualTo(2);
        assertThat(plan.run(1).ids()).isEqualTo(Map.of("a", "a1", "b", "b2"));
        assertThat(plan.run(2).ids()).isEqualTo(Map.of("a", "a2", "b", "b1"));
    }

    @Test
    void aStudyWithoutAxesIsOneFitForEachSeed() {
        assertThat(plan("", "").count()).isEqualTo(1);
        assertThat(plan("", "\"seeds\": {\"first\": 1, \"count\": 5}").run(5).seed())
                .isEqualTo(5);
    }

    @Test
    void refusesTooManyRunsAndNone() {
        assertThatThrownBy(() -> plan(TWO_AXES, "\"seeds\": {\"first\": 1, \"count\": 1000000000}"))
                .hasMessage("The study asks for 6000000000 runs; at most 100000 are taken. Take fewer settings or"
                        + " seeds, leave more out, or split it.");
        String settings = IntStream.range(0, 100)
                .mapToObj(number -> "{\"id\": \"s" + number + "\"}")
                .collect(Collectors.joining(","));
        String axes = Stream.of("a", "b", "c", "d")
                .map(axis -> "{\"id\": \"" + axis + "\", \"settings\": [" + settings + "]}")
                .collect(Collectors.joining(","));
        assertThatThrownBy(() -> plan(axes, "")).hasMessageStartingWith("The study asks for 100000000 runs;");
        assertThatThrownBy(() -> plan(TWO_AXES, "\"leaveOut\": [{\"when\": {\"a\": [\"a1\", \"a2\"]}}]"))
                .hasMessage("The study leaves out every run. Leave out fewer.");
        assertThatThrownBy(() -> plan(TWO_AXES, "").run(7))
                .hasMessage("There is no run 7: the study has the runs 1 to 6.");
    }
}
