package org.shelterwright.layouts.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Insulation;
import org.shelterwright.layouts.brief.Activity;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.trial.TrialBody;

class ShellTest {
    /** Q = U A ΔT: 0.7 · 6.0 · 25 = 105 W. Worked number, read in a textbook page. */
    @Test
    void heatPassageAgreesWithTheWorkedNumber() {
        Shell shell = new Shell(0.7 * 6.0, 0, 0, 0, 0);

        assertThat(shell.throughW(25, 0)).isCloseTo(105, within(1e-9));
        assertThat(shell.throughW(-5, 20)).isCloseTo(-105, within(1e-9));
    }

    @Test
    void openingsAreTakenOutOfTheWallsAndAreasAreThoseOfTheOutside() {
        // given a body of 2.1 x 1.1 x 2.1 m outside, with a door of 0.8 x 2 m
        Insulation insulation = new Insulation(1, 2, 3, 10, 0, 0);
        Shell shell = Shell.of(TrialBody.of(2000, 1000, 2000).rearDoor(100, 900).build(), insulation);

        assertThat(shell.openingsWK()).isCloseTo(10 * 1.6, within(1e-9));
        assertThat(shell.wallsWK()).isCloseTo(2 * (2.1 + 1.1) * 2.1 - 1.6, within(1e-9));
        assertThat(shell.roofWK()).isCloseTo(2 * 2.1 * 1.1, within(1e-9));
        assertThat(shell.floorWK()).isCloseTo(3 * 2.1 * 1.1, within(1e-9));
    }

    /** Sol-air temperature: α/h_o = 0.45/17 = 0.026 for a light surface (ASHRAE, from memory), less 4 K on a roof. */
    @Test
    void theSunWarmsARoofAsHotterAirWould() {
        Shell roof = new Shell(0, 0, 1, 0, 0.45);
        Shell walls = new Shell(1, 0, 0, 0, 0.45);

        assertThat(roof.sunW(sun(1000, 0))).isCloseTo(1000 * 0.45 / 17 - 4, within(1e-9));
        assertThat(walls.sunW(sun(0, 1000))).isCloseTo(26.5, within(0.05));
        assertThat(roof.sunW(sun(0, 0))).as("no sun takes no heat away").isZero();
    }

    /** ASHRAE Handbook Fundamentals 2009 and 2013, chapter 18, table 1: total and sensible heat of a person (W). */
    @Test
    void peopleGiveOffWhatTheTableSays() {
        total(Activity.SEATED_VERY_LIGHT, 115, 70);
        total(Activity.OFFICE_WORK, 130, 75);
        total(Activity.STANDING_LIGHT, 130, 75);
        total(Activity.LIGHT_BENCH_WORK, 220, 80);
        total(Activity.HEAVY_WORK, 425, 170);
    }

    private static void total(Activity activity, double totalW, double sensibleW) {
        assertThat(activity.sensibleW()).isEqualTo(sensibleW);
        assertThat(activity.sensibleW() + activity.latentW()).isEqualTo(totalW);
    }

    /** 1 kW warms about 300 m³/h by 10 K (common practice). */
    @Test
    void airCarriesHeatAsTheRuleOfTheTradeSays() {
        assertThat(HeatBalance.AIR_W_PER_M3H_K * 300 * 10).isCloseTo(1000, within(10.0));
    }

    private static Weather sun(double roof, double walls) {
        return new Weather(30, 20, 25, roof, walls, 0);
    }
}
