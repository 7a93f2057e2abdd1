package org.shelterwright.layouts.ledger.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.fastener.Fastener;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.rules.LoadCase.Basis;

class BoltsTest {
    private static HeldFixing held(String grade) {
        return held(Objects.requireNonNull(Fasteners.builtIn().of("M10", grade)));
    }

    private static HeldFixing held(Fastener bolt) {
        String grade = bolt.grade();
        Fixing fixing = new Fixing("F1", Point.ORIGIN, Face.BOTTOM, "M10", grade, null);
        PlacedFixing placed = new PlacedFixing(fixing, Point.ORIGIN, Face.BOTTOM, null, false);
        return new HeldFixing(placed, bolt, null, "rail", 5000, 8000);
    }

    /**
     * Proof loads of M10: 33.7 kN of 8.8 and 48.1 kN of 10.9; ultimate loads 46.4 kN and 60.3 kN (EN ISO 898-1). Shear: 0.6 of that of
     * class 8.8, 0.5 of class 10.9, with the thread in the shear plane (EN 1993-1-8, table 3.4, from memory).
     */
    @Test
    void aBoltBearsItsShareInShearByItsClass() {
        assertThat(held("8.8").boltUse(0, 0.6 * 33_700, Basis.PROOF)).isCloseTo(1, within(1e-9));
        assertThat(held("8.8").boltUse(0, 0.6 * 46_400, Basis.ULTIMATE)).isCloseTo(1, within(1e-9));
        assertThat(held("10.9").boltUse(0, 0.5 * 48_100, Basis.PROOF)).isCloseTo(1, within(1e-9));
        assertThat(held("10.9").boltUse(60_300, 0, Basis.ULTIMATE)).isCloseTo(1, within(1e-9));
    }

    /** Cold-worked classes bear half in shear too (EN 1993-1-8, table 3.4, from memory): M10 5.8 with 380 MPa on 58 mm². */
    @Test
    void coldWorkedClassesBearHalfInShear() {
        assertThat(held(new Fastener("M10", "5.8", 10, 1.5, 58, 22_040, 30_160)).boltUse(0, 11_020, Basis.PROOF))
                .isCloseTo(1, within(1e-9));
        assertThat(held(new Fastener("M10", "5.6", 10, 1.5, 58, 16_240, 29_000)).boltUse(0, 0.6 * 16_240, Basis.PROOF))
                .isCloseTo(1, within(1e-9));
    }

    /** 3-4-5: 0.6 of the tensile and 0.8 of the shear strength are all of a bolt; halves of both are all of a hard point. */
    @Test
    void pullAndShearAddByTheirRules() {
        assertThat(held("8.8").boltUse(0.6 * 33_700, 0.8 * 0.6 * 33_700, Basis.PROOF))
                .isCloseTo(1, within(1e-9));
        assertThat(held("8.8").hardPointUse(2500, 4000)).isCloseTo(1, within(1e-12));
    }

    @Test
    void strongerBoltsAreThoseOfTheSameThreadThenThickerOnesOfTheSameClass() {
        Fasteners fasteners = Fasteners.builtIn();

        assertThat(fasteners.strongerThan(Objects.requireNonNull(fasteners.of("M16", "8.8"))))
                .extracting(one -> Fasteners.name(one.thread(), one.grade()))
                .containsExactly("M16 10.9", "M20 8.8", "M24 8.8");
        assertThat(fasteners.strongerThan(Objects.requireNonNull(fasteners.of("M24", "10.9"))))
                .isEmpty();
    }
}
