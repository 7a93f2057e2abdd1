package org.shelterwright.catalog.sliding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

class SlideSpaceTest {
    private static final Box DOMAIN = Box.ofMm(-2000, -100, -100, 2000, 2000, 2000);
    private static final Box OUT = Box.ofMm(-2000, -100, -100, -1000, 2000, 2000);

    /** A rear wall at x = 0 with a gap from y = 300 to y = 300 + width, over the whole height. */
    private static List<Obstacle> wallWithGap(int widthMm) {
        return List.of(
                new Obstacle(Box.ofMm(-100, -3000, -3000, 0, 300, 4000), Obstacle.FIXED),
                new Obstacle(Box.ofMm(-100, 300 + widthMm, -3000, 0, 6000, 4000), Obstacle.FIXED));
    }

    @Test
    void exactFitPassesThroughADoor() {
        SlideSpace space = new SlideSpace(List.of(Box.ofMm(0, 0, 0, 500, 400, 700)), wallWithGap(400), DOMAIN);

        Slide slide = space.slide(Point.ofMm(600, 900, 0), OUT, new BitSet());

        assertThat(slide.free()).isTrue();
        assertThat(slide.path()).startsWith(Point.ofMm(600, 900, 0));
        assertThat(OUT.contains(slide.path().get(slide.path().size() - 1))).isTrue();
    }

    @Test
    void oneMicrometreTooWideDoesNotPass() {
        SlideSpace space =
                new SlideSpace(List.of(new Box(0, 0, 0, 500_000, 400_001, 700_000)), wallWithGap(400), DOMAIN);

        Slide slide = space.slide(Point.ofMm(600, 900, 0), OUT, new BitSet());

        assertThat(slide.free()).isFalse();
        assertThat(slide.frontier()).as("fixed obstacles alone are the reason").isEqualTo(new BitSet());
    }

    @Test
    void namesWhatIsInTheWayAndPassesWhenItIsGone() {
        List<Obstacle> obstacles = new ArrayList<>(wallWithGap(400));
        obstacles.add(new Obstacle(Box.ofMm(200, 200, 0, 400, 800, 1500), 7));
        obstacles.add(new Obstacle(Box.ofMm(1900, 1800, 1800, 1950, 1850, 1900), 3));
        Box low = Box.ofMm(-2000, -100, 0, 2000, 2000, 1000);
        SlideSpace space = new SlideSpace(List.of(Box.ofMm(0, 0, 0, 500, 400, 700)), obstacles, low);
        BitSet gone = new BitSet();

        Slide stuck = space.slide(Point.ofMm(600, 300, 0), Box.ofMm(-2000, -100, 0, -1000, 2000, 1000), gone);
        gone.set(7);
        Slide out = space.slide(Point.ofMm(600, 300, 0), Box.ofMm(-2000, -100, 0, -1000, 2000, 1000), gone);

        assertThat(stuck.free()).isFalse();
        assertThat(stuck.frontier().stream()).contains(7);
        assertThat(out.free()).isTrue();
        assertThat(out.path()).containsExactly(Point.ofMm(600, 300, 0), Point.ofMm(-1000, 300, 0));
    }

    @Test
    void refusesToStartWhereSomethingIsInTheWay() {
        SlideSpace space = new SlideSpace(List.of(Box.ofMm(0, 0, 0, 500, 400, 700)), wallWithGap(400), DOMAIN);

        assertThatThrownBy(() -> space.slide(Point.ofMm(-50, 0, 0), OUT, new BitSet()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("something is in the way");
        assertThat(space.blocking(Point.ofMm(-50, 0, 0), new BitSet())).containsExactly(Obstacle.FIXED);
    }
}
