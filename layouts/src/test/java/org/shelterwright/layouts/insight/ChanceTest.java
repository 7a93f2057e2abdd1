package org.shelterwright.layouts.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;

/** Draws of masses against the closed form for their sum. */
class ChanceTest {
    private static final Checker CHECKER = Checker.standard();

    /** A body with four units whose mass exceeds what is allowed if their errors add up to a share of their sum. */
    private static Scene scene(double shareOfReach) {
        Scene whole = CHECKER.scene(layout(0));
        LoadStates states = LoadStates.of(whole);
        Quantity mass = Quantity.ofBody(Influence.MASS);
        double nominal = states.most(mass, states.modes()).nominal();
        double reach = states.uncertaintyKg(mass, states.modes().get(0));
        Double rating = whole.body().grossRatingKg();
        assertThat(rating).isNotNull();
        return CHECKER.scene(layout(1 - (nominal + shareOfReach * reach) / rating));
    }

    private static Layout layout(double reserve) {
        String text = """
                {"format": "shelterwright-brief", "version": 1, "id": "four", "name": "Four",
                 "body": "box-4200", "crew": 0, "ruleSets": ["shelter-common"],
                 "limits": {"mass.reserve-share": %s},
                 "units": [
                   {"id": "rack-1", "name": "Rack 1", "item": "rack-19-34u", "group": "racks"},
                   {"id": "battery", "name": "Battery", "item": "battery-box-24v", "group": "power"},
                   {"id": "aid", "name": "First aid", "item": "first-aid-cabinet", "group": "safety"},
                   {"id": "table", "name": "Table", "item": "chart-table", "group": "work"}]}
                """.formatted(reserve);
        Brief brief = LayoutFormats.BRIEF.read(text.getBytes(StandardCharsets.UTF_8), "four.json");
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (int i = 0; i < brief.units().size(); i++) {
            String unit = brief.units().get(i).id();
            placements.put(unit, Placement.of(unit, Place.onFloor(Pose.at(Point.ofMm(900 * i, 0, 0)))));
        }
        return Layout.empty(brief, Parts.of(brief, BuiltInCatalog.read())).withPlacements(placements);
    }

    private static Odds gross(Scene scene, int draws, long seed) {
        return new Chance(CHECKER.book(), scene)
                .draw(draws, seed).stream()
                        .filter(one -> one.limit().equals("mass.body-gross"))
                        .findFirst()
                        .orElseThrow();
    }

    @Test
    void theStatedRangeHoldsTheClosedFormAsOftenAsItSays() {
        for (double share : new double[] {0.1, 0.4}) {
            Scene scene = scene(share);
            int held = 0;
            for (long seed = 1; seed <= 40; seed++) {
                Odds odds = gross(scene, 150, seed);
                Double closed = odds.closedForm();
                assertThat(odds.exact()).isTrue();
                assertThat(closed).isNotNull().isBetween(0.05, 0.49);
                held += odds.low() <= closed && closed <= odds.high() ? 1 : 0;
            }
            assertThat(held)
                    .as("of 40 ranges of 95 %%, at a share of %s", share)
                    .isBetween(35, 40);
        }
    }

    @Test
    void manyDrawsComeCloseToTheClosedForm() {
        Odds odds = gross(scene(0.2), 5_000, 7);

        Double closed = odds.closedForm();
        assertThat(closed).isNotNull();
        assertThat(Math.abs(odds.share() - closed)).isLessThan(0.02);
        assertThat(odds.high() - odds.low()).isLessThan(0.03);
    }

    @Test
    void theSameSeedGivesTheSame() {
        Scene scene = scene(0.3);

        assertThat(gross(scene, 100, 3)).isEqualTo(gross(scene, 100, 3)).isNotEqualTo(gross(scene, 100, 4));
    }

    @Test
    void whatIsCertainIsNeverExceeded() {
        List<Odds> odds = new Chance(CHECKER.book(), scene(1.01)).draw(50, 1);

        assertThat(odds)
                .filteredOn(one -> one.limit().equals("mass.body-gross"))
                .allSatisfy(one -> {
                    assertThat(one.exceeded()).isZero();
                    assertThat(one.closedForm()).isEqualTo(0.0);
                    assertThat(one.low()).isZero();
                });
    }
}
