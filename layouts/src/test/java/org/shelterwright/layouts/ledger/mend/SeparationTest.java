package org.shelterwright.layouts.ledger.mend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

class SeparationTest {
    @ParameterizedTest
    @EnumSource(Face.class)
    void theShiftFreesAndNoShorterOneDoes(Face way) {
        Random random = new Random(way.ordinal());
        for (int i = 0; i < 500; i++) {
            List<Box> moving = boxes(random);
            List<Box> fixed = boxes(random);
            int shift = Separation.along(way, moving, fixed);
            for (int shorter = 0; shorter <= shift; shorter++) {
                Point by = new Shift(way, shorter).vector();
                boolean free = moving.stream().noneMatch(box -> fixed.stream().anyMatch(box.moved(by)::overlaps));
                assertThat(free).as(moving + " " + fixed + " " + shorter).isEqualTo(shorter == shift);
            }
        }
    }

    private static List<Box> boxes(Random random) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            Point low = new Point(random.nextInt(5), random.nextInt(5), random.nextInt(5));
            boxes.add(Box.between(
                    low, low.plus(new Point(1 + random.nextInt(4), 1 + random.nextInt(4), 1 + random.nextInt(4)))));
        }
        return boxes;
    }

    @Test
    void aUnitOnAWallIsShiftedAlongTheWall() {
        TrialItem panel = TrialItem.of("panel", 200, 600, 400).on(Surface.WALL);
        Scene scene = Trial.in(TrialBody.of(4000, 2000, 2000))
                .put("rear", panel, Trial.at(Surface.WALL, 0, 500, 900, QuarterTurn.R0))
                .put("right", panel, Trial.at(Surface.WALL, 500, 0, 900, QuarterTurn.R90))
                .scene();

        // given an obstacle that is left soonest by going off the wall
        assertThat(least(scene, 0, Box.ofMm(190, 500, 880, 300, 1000, 1300))).isEqualTo("400 mm up");
        assertThat(least(scene, 0, Box.ofMm(190, 500, 900, 300, 600, 1300))).isEqualTo("100 mm to the left");
        assertThat(least(scene, 1, Box.ofMm(1050, 190, 900, 2000, 300, 1300))).isEqualTo("50 mm to the rear");
        assertThat(least(scene, 1, Box.ofMm(400, 190, 1280, 2000, 300, 2000))).isEqualTo("20 mm down");
    }

    private static String least(Scene scene, int unit, Box obstacle) {
        return Separation.least(scene, scene.units().get(unit), Situation.ON_STATION, List.of(obstacle))
                .map(Shift::words)
                .orElse("none");
    }

    @Test
    void aShiftOutOfTheBodyIsNoMend() {
        Scene scene = Trial.in(TrialBody.of(1000, 600, 2000))
                .floor("one", TrialItem.of("rack", 800, 600, 1800), 0, 0)
                .scene();

        assertThat(least(scene, 0, Box.ofMm(0, 0, 0, 300, 600, 100))).isEqualTo("none");
        assertThat(least(scene, 0, Box.ofMm(0, 0, 0, 200, 600, 100))).isEqualTo("200 mm forward");
    }

    @Test
    void shiftsAreToldInWords() {
        assertThat(Shift.words(Point.ofMm(12, -5, 0))).isEqualTo("12 mm forward and 5 mm to the right");
        assertThat(Shift.words(Point.ofMm(-1, 2, -3))).isEqualTo("1 mm to the rear, 2 mm to the left and 3 mm down");
        assertThat(Shift.words(Point.ORIGIN)).isEmpty();
        assertThat(new Shift(Face.TOP, 44_450).words()).isEqualTo("44.45 mm up");
    }

    @Test
    void theWorseSituationGoverns() {
        assertThat(GoverningCase.of(situation -> 7)).isEqualTo(new GoverningCase(7, Situation.ON_STATION, "always"));
        assertThat(GoverningCase.of(Situation::ordinal))
                .isEqualTo(new GoverningCase(1, Situation.ON_THE_ROAD, "on the road"));
        assertThat(GoverningCase.of(situation -> 1 - situation.ordinal()))
                .isEqualTo(new GoverningCase(1, Situation.ON_STATION, "on station"));
    }
}
