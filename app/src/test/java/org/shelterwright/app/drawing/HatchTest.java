package org.shelterwright.app.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HatchTest {

    private static final Pen PEN = Pen.of(0.1, Colour.BLACK);

    @Test
    void hatchLinesRunAtTheirAngleUpTheSheetAndEndOnTheOutline() {
        // given
        Bounds square = new Bounds(0, 0, 10, 10);
        // when
        List<List<Spot>> lines = Hatch.of(square, 45, 1, PEN).lines();
        // then: the diagonal of the square is 10 √2 long, so 14 lines a millimetre apart cross it
        assertThat(lines).hasSize(14);
        assertThat(lines).allSatisfy(line -> {
            Spot a = line.get(0);
            Spot b = line.get(1);
            assertThat(square.grown(1e-9).contains(a)).isTrue();
            assertThat(square.grown(1e-9).contains(b)).isTrue();
            assertThat((b.y() - a.y()) / (b.x() - a.x())).isCloseTo(-1, within(1e-9));
        });
    }

    @Test
    void hatchesOfNeighboursJoin() {
        List<List<Spot>> left = Hatch.of(new Bounds(0, 0, 5, 10), 45, 2, PEN).lines();
        List<List<Spot>> right = Hatch.of(new Bounds(5, 0, 10, 10), 45, 2, PEN).lines();

        long joined = left.stream()
                .map(line -> line.get(1))
                .filter(end -> Math.abs(end.x() - 5) < 1e-9)
                .filter(end -> right.stream().anyMatch(line -> line.get(0).distance(end) < 1e-9))
                .count();

        assertThat(joined).isEqualTo(4);
    }

    @Test
    void aHatchWithoutPitchIsRefused() {
        assertThatThrownBy(() -> Hatch.of(new Bounds(0, 0, 1, 1), 45, 0, PEN))
                .hasMessage("The pitch of a hatch must be above zero, but is 0.0 mm.");
    }
}
