package org.shelterwright.layouts.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.source.Source.Trust;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.rules.RuleSet.AxleRules;

class BuiltInRuleSetsTest {
    private static final double POUND = 0.45359237;
    private static final double INCH_MM = 25.4;

    /** Figures of the regulations in their own units: 29 CFR 1910.36(g)(2), 29 CFR 1910.303(g), NFPA 1901 12.1.2. */
    @Test
    void figuresAgreeWithTheirSources() {
        Rules common = rules("shelter-common");
        Rules rescue = rules("shelter-common", "rescue-vehicle");

        assertThat(value(common, Figure.EXIT_WIDTH)).isCloseTo(28 * INCH_MM, within(1e-9));
        assertThat(value(common, Figure.WALKWAY_HEADROOM)).isCloseTo(78 * INCH_MM, within(1e-9));
        assertThat(value(common, Figure.PERSON_MASS)).isEqualTo(75);
        assertThat(value(rescue, Figure.PERSON_MASS)).isCloseTo(250 * POUND, within(0.05));
        assertThat(value(rules("road-us"), Figure.PERSON_MASS)).isCloseTo(175 * POUND, within(0.05));
        assertThat(value(rescue, Figure.SIDE_DIFFERENCE)).isEqualTo(0.07);
        assertThat(value(rescue, Figure.CENTRE_HEIGHT_TO_TRACK)).isEqualTo(0.8);
        assertThat(value(rescue, Figure.TILT_ANGLE)).isEqualTo(26.5);
    }

    /** 29 CFR 1910.303 Table S-1 in feet and 1910.36(g) in inches, 14 CFR 25.815, NUREG-0700 12.1.1.3-5, MIL-STD-1472. */
    @Test
    void accessTablesAgreeWithTheirSources() {
        Rules work = rules("workplace-us");
        assertThat(inches(work, Figure.ELECTRIC_DEPTH_LOW)).isCloseTo(3.0 * 12, within(1e-9));
        assertThat(inches(work, Figure.ELECTRIC_DEPTH_EARTHED)).isCloseTo(3.5 * 12, within(1e-9));
        assertThat(inches(work, Figure.ELECTRIC_DEPTH_LIVE)).isCloseTo(4.0 * 12, within(1e-9));
        assertThat(inches(work, Figure.ELECTRIC_DEPTH_SIDE)).isCloseTo(30, within(1e-9));
        assertThat(inches(work, Figure.ELECTRIC_WIDTH)).isCloseTo(30, within(1e-9));
        assertThat(inches(work, Figure.ELECTRIC_HEADROOM)).isCloseTo(78, within(1e-9));
        assertThat(inches(work, Figure.ELECTRIC_PROJECTION)).isCloseTo(6, within(1e-9));
        assertThat(inches(work, Figure.EXIT_WIDTH)).isCloseTo(28, within(1e-9));
        assertThat(inches(work, Figure.EXIT_CEILING)).isCloseTo(90, within(1e-9));
        assertThat(inches(work, Figure.EXIT_HEADROOM)).isCloseTo(80, within(1e-9));
        assertThat(inches(rules("control-room-us"), Figure.WORK_PLACE_DEPTH)).isCloseTo(36, within(1e-9));
        assertThat(inches(rules("control-room-us"), Figure.WORK_PLACE_WIDTH)).isCloseTo(30, within(1e-9));
        assertThat(inches(rules("military-us"), Figure.RACK_FRONT)).isCloseTo(42, within(1e-9));
        assertThat(inches(rules("military-us"), Figure.DRAWER_FRONT)).isCloseTo(8, within(1e-9));
        assertThat(inches(rules("military-us"), Figure.WALKWAY_WIDTH)).isCloseTo(32, within(1e-9));
        for (String seats : List.of("10 12 15", "19 12 20", "20 15 20")) {
            String[] one = seats.split(" ");
            Rules aisle = rules("aisle-us-" + one[0] + "-seats");
            assertThat(inches(aisle, Figure.AISLE_SPLIT)).isCloseTo(25, within(1e-9));
            assertThat(inches(aisle, Figure.AISLE_BELOW)).isCloseTo(Double.parseDouble(one[1]), within(1e-9));
            assertThat(inches(aisle, Figure.AISLE_ABOVE)).isCloseTo(Double.parseDouble(one[2]), within(1e-9));
        }
    }

    @Test
    void roadRulesComeWithTheirTables() {
        assertThat(rules("road-eu", "road-us").axleRules())
                .isEqualTo(Set.of(AxleRules.EU_96_53, AxleRules.US_23_CFR_658));
        assertThat(value(rules("road-eu"), Figure.DRIVEN_SHARE)).isEqualTo(0.25);
        assertThat(value(rules("road-eu"), Figure.STEERED_SHARE)).isEqualTo(0.2);
    }

    @Test
    void whatWasNotReadSaysSo() {
        for (Figure figure : List.of(Figure.RACK_FRONT, Figure.DRAWER_FRONT)) {
            assertThat(rules("military-us").rule(figure).orElseThrow().source().trust())
                    .isEqualTo(Trust.FROM_MEMORY);
        }
        for (Figure figure : List.of(Figure.SIDE_DIFFERENCE, Figure.TILT_ANGLE, Figure.CENTRE_HEIGHT_TO_TRACK)) {
            assertThat(rules("rescue-vehicle")
                            .rule(figure)
                            .orElseThrow()
                            .source()
                            .trust())
                    .isEqualTo(Trust.FROM_MEMORY);
        }
    }

    @Test
    void everyMassBasisHasItsGrowthAndUncertainty() {
        Rules common = rules("shelter-common");

        for (Figure figure : Figure.values()) {
            if (figure.id().startsWith("mass.growth") || figure.id().startsWith("mass.uncertainty")) {
                assertThat(common.rule(figure)).as(figure.id()).isPresent();
            }
        }
    }

    private static double value(Rules rules, Figure figure) {
        return rules.value(figure).orElseThrow();
    }

    private static double inches(Rules rules, Figure figure) {
        return value(rules, figure) / INCH_MM;
    }

    private static Rules rules(String... sets) {
        Brief brief =
                Brief.named("test", "Test", "body").ruleSets(List.of(sets)).build();
        return Rules.of(brief, RuleSets.builtIn());
    }
}
