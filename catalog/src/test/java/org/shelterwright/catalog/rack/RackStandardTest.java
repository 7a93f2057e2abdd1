package org.shelterwright.catalog.rack;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Lengths;
import static org.assertj.core.api.Assertions.assertThat;

/** Held against IEC 60297-3-100 and EIA-310-D. */
class RackStandardTest {
    @Test
    void aUnitIsOneAndThreeQuartersOfAnInch() {
        assertThat(RackStandard.UNIT).isEqualTo(Lengths.parse("1.75 in"));
        assertThat(RackStandard.PANEL_WIDTH).isEqualTo(Lengths.parse("19 in"));
        assertThat(RackStandard.OPENING).isEqualTo(Lengths.parse("17.75 in"));
    }

    @Test
    void fortyTwoUnitsAre1866Point9Millimetres() {
        assertThat(RackStandard.height(42)).isEqualTo(1_866_900);
    }

    @Test
    void aPanelIsAThirtySecondOfAnInchLowerThanItsUnits() {
        assertThat(RackStandard.panelHeight(1)).isEqualTo(43_660);
        assertThat(RackStandard.panelHeight(3)).isEqualTo(132_560);
    }

    @Test
    void holesLieFiveEighthsFiveEighthsAndHalfAnInchApart() {
        List<Integer> holes = RackStandard.holes(3);

        assertThat(holes).hasSize(9).startsWith(6_350);
        for (int i = 1; i < holes.size(); i++) {
            assertThat(holes.get(i) - holes.get(i - 1))
                    .isEqualTo(i % 3 == 0 ? Lengths.parse("0.5 in") : Lengths.parse("0.625 in"));
        }
    }

    @Test
    void thePatternRepeatsWithEachUnit() {
        List<Integer> holes = RackStandard.holes(42);

        for (int i = 3; i < holes.size(); i++) {
            assertThat(holes.get(i) - holes.get(i - 3)).isEqualTo(RackStandard.UNIT);
        }
    }

    @Test
    void aPanelIsScrewedAtItsOutermostHoles() {
        assertThat(RackStandard.screws(1, 1)).containsExactly(6_350, 38_100);
        assertThat(RackStandard.screws(2, 3)).containsExactly(44_450 + 6_350, 3 * 44_450 + 38_100);
    }
}
