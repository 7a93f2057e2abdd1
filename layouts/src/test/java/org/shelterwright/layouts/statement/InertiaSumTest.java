package org.shelterwright.layouts.statement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

class InertiaSumTest {
    private static final Offset<Double> EXACT = within(1e-9);

    /**
     * Worked example of physics books on the parallel axis theorem (answers from memory): a bar of 2.00 m and 4.00 kg with balls of
     * 0.300 kg at its ends: 1.93 kg·m² about its middle, 6.53 through one ball, 1.15 about a parallel line at 0.500 m.
     */
    @Test
    void aBarWithBallsAtItsEndsAgreesWithTheBook() {
        InertiaSum sum = dumbbell();

        Inertia centre = sum.aboutCentre();
        double balls = 0.3 * 2 * 2;

        assertThat(centre.zz()).isCloseTo(1.93, within(0.005));
        assertThat(centre.zz() + 4.6 * 1 * 1).isCloseTo(6.53, within(0.005));
        assertThat(4.0 / 3 * 4 + balls).isCloseTo(6.53, within(0.005));
        assertThat(centre.xx() + 4.6 * 0.5 * 0.5).isCloseTo(1.15, within(0.005));
    }

    private static InertiaSum dumbbell() {
        InertiaSum sum = new InertiaSum();
        sum.add(4, Point.ofMm(5000, 300, 700), Inertia.ofCuboid(4, 2, 0, 0));
        sum.add(0.3, Point.ofMm(4000, 300, 700), Inertia.NONE);
        sum.add(0.3, Point.ofMm(6000, 300, 700), Inertia.NONE);
        return sum;
    }

    /** A rectangular sheet about an axis through a corner, square to it: M (a² + b²) / 3. */
    @Test
    void aSheetAboutItsCornerIsAThird() {
        double a = 3;
        double b = 2;

        Inertia corner = Inertia.ofCuboid(6, a, b, 0).plus(Inertia.ofPoint(6, a / 2, b / 2, 0));

        assertThat(corner.zz()).isCloseTo(6 * (a * a + b * b) / 3, EXACT);
        assertThat(corner.xy()).isCloseTo(6 * a * b / 4, EXACT);
    }

    /** A cuboid cut in any way has the inertia of the whole. */
    @Test
    void aCuboidInPiecesIsTheWholeCuboid() {
        Box left = Box.ofMm(0, 0, 0, 600, 1000, 400);
        Box right = Box.ofMm(600, 0, 0, 2000, 1000, 400);

        Inertia pieces = InertiaSum.ofSolids(50, List.of(left, right));

        Inertia whole = Inertia.ofCuboid(50, 2, 1, 0.4);
        assertThat(pieces.xx()).isCloseTo(whole.xx(), EXACT);
        assertThat(pieces.yy()).isCloseTo(whole.yy(), EXACT);
        assertThat(pieces.zz()).isCloseTo(whole.zz(), EXACT);
        assertThat(pieces.xy()).isCloseTo(0, EXACT);
    }

    /** An L of two cubes has products of inertia: by hand, two cubes of 1 kg at (−½, −½) and (½, ½) from their centre. */
    @Test
    void whatIsNotSymmetricHasProducts() {
        Inertia pair = InertiaSum.ofSolids(
                2, List.of(Box.ofMm(0, 0, 0, 1000, 1000, 1000), Box.ofMm(1000, 1000, 0, 2000, 2000, 1000)));

        assertThat(pair.xy()).isCloseTo(0.5, EXACT);
        assertThat(pair.yz()).isCloseTo(0, EXACT);
        assertThat(pair.zz()).isCloseTo(2 * (1 / 6.0 + 0.5), EXACT);
    }

    @Test
    void aShellWeighsOnlyBetweenItsFaces() {
        // outer 2 x 2 x 2 m less inner 1 x 1 x 1 m: density 7/7 = 1 kg/m³ for 7 kg
        Inertia shell = InertiaSum.ofShell(
                7, Box.ofMm(-500, -500, -500, 1500, 1500, 1500), Box.ofMm(0, 0, 0, 1000, 1000, 1000));

        assertThat(shell.xx()).isCloseTo(8 * 8 / 12.0 - 1 * 2 / 12.0, EXACT);
        assertThat(InertiaSum.ofShell(12, Box.ofMm(0, 0, 0, 1000, 1000, 1000), Box.ofMm(0, 0, 0, 1000, 1000, 1000))
                        .xx())
                .isCloseTo(2, EXACT);
        assertThat(new InertiaSum().aboutCentre()).isEqualTo(Inertia.NONE);
    }
}
