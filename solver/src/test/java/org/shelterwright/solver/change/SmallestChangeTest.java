package org.shelterwright.solver.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.insight.Grown;
import org.shelterwright.layouts.insight.Worsening;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.study.ItemChange;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;

class SmallestChangeTest {
    private static final Catalog CATALOG = BuiltInCatalog.read();
    private static final Checker CHECKER = Checker.standard();
    private static final StandardFitter FITTER = new StandardFitter(CHECKER);
    private static final String UNITS = """
            {"id": "rack-1", "name": "Rack 1", "item": "rack-19-34u", "group": "racks"},
            {"id": "battery-box", "name": "Battery box", "item": "battery-box-24v", "group": "power"},
            {"id": "winch", "name": "Winch crate", "item": "winch-crate", "group": "rescue"},
            {"id": "first-aid", "name": "First-aid cabinet", "item": "first-aid-cabinet", "group": "safety"}""";
    private static Layout before;

    @BeforeAll
    static void fit() {
        before = fitted();
    }

    private static Brief brief(String units) {
        String text = """
                {"format": "shelterwright-brief", "version": 1, "id": "small-post", "name": "Small Post",
                 "body": "box-4200", "carrier": "truck-two-axle", "crew": 2, "ruleSets": ["shelter-common"],
                 "units": [%s]}
                """.formatted(units);
        return LayoutFormats.BRIEF.read(text.getBytes(StandardCharsets.UTF_8), "brief.json");
    }

    private static Layout fitted() {
        Brief brief = brief(UNITS);
        Layout start = Layout.empty(brief, Parts.of(brief, CATALOG));
        return FITTER.withoutReasons()
                .fit(new FitRequest(start, 1, Budget.moves(5_000), 2, 1), progress -> {}, new StopSignal())
                .options()
                .get(0)
                .layout();
    }

    private static ChangeResult change(Layout asked) {
        return new SmallestChange(CHECKER, FITTER)
                .find(new ChangeRequest(before, asked, 1, 5_000, 2), new StopSignal());
    }

    private static Layout larger(int deeper, double heavier) {
        Item item = before.parts().item("battery-box-24v");
        return Grown.items(before, Map.of(item.id(), new ItemChange(item.id(), deeper, null, null, heavier).of(item)));
    }

    @Test
    void whatStillFitsMovesNothing() {
        ChangeResult result = change(larger(1_000, 0.5));

        assertThat(result.searches()).isZero();
        assertThat(result.broken()).isEmpty();
        assertThat(result.revision().reuse().holeShare()).isEqualTo(1);
        assertThat(result.loosened()).isEmpty();
    }

    @Test
    void aNewUnitFindsAPlaceAmongThoseThatStay() {
        Brief more = brief(UNITS + """
                , {"id": "crate-2", "name": "Second crate", "item": "winch-crate", "group": "rescue"}""");
        Layout asked = Grown.onto(before, Layout.empty(more, Parts.of(more, CATALOG)));

        ChangeResult result = change(asked);

        assertThat(result.broken()).isEmpty();
        assertThat(result.searches()).isEqualTo(1);
        assertThat(result.loosened()).contains("crate-2");
        Layout after = result.revision().after().layout();
        assertThat(after.placements()).containsKey("crate-2").containsAllEntriesOf(placesOf(before));
        assertThat(result.revision().reuse().holeShare()).isEqualTo(1);
        assertThat(new Worsening(CHECKER.check(before)).first(CHECKER.check(after)))
                .isEmpty();
    }

    private static Map<String, Placement> placesOf(Layout layout) {
        return new LinkedHashMap<>(layout.placements());
    }

    @Test
    void whatIsTakenOutIsGoneAndTheRestStays() {
        Brief less = brief(UNITS.substring(0, UNITS.indexOf(",\n{\"id\": \"first-aid\"")));
        Layout asked = Grown.onto(before, Layout.empty(less, Parts.of(less, CATALOG)));

        ChangeResult result = change(asked);

        assertThat(result.broken()).isEmpty();
        assertThat(result.revision().units())
                .singleElement()
                .satisfies(one -> assertThat(one.second()).isNull());
        assertThat(result.revision().after().brief().units())
                .extracting(UnitSpec::id)
                .containsExactly("rack-1", "battery-box", "winch");
    }

    @Test
    void whatNoMoveCanMendIsToldWithItsRows() {
        ChangeResult result = change(larger(0, 9_000));

        assertThat(result.broken()).isNotEmpty();
        assertThat(result.broken()).extracting(row -> row.limit()).contains("mass.body-gross");
    }

    @Test
    void theSameRequestGivesTheSame() {
        Layout asked = larger(400_000, 30);

        assertThat(change(asked).revision().after().layout())
                .isEqualTo(change(asked).revision().after().layout());
    }

    @Test
    void theBestMovesEaseTheLimitAndBreakNothing() {
        Gains gains = new Gains(CHECKER, before, "axles.axle-load");

        List<GainfulMove> moves = gains.best(3);

        assertThat(moves).isNotEmpty();
        Worsening worsening = new Worsening(CHECKER.check(before));
        for (GainfulMove move : moves) {
            assertThat(move.gain()).isPositive();
            assertThat(move.before()).isEqualTo(gains.before());
            assertThat(worsening.first(CHECKER.check(move.layout()))).isEmpty();
            assertThat(move.layout().placements().get(move.unit()))
                    .isNotEqualTo(before.placements().get(move.unit()));
        }
        assertThat(moves).extracting(GainfulMove::gain).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void thereIsNothingToGainOnALimitThatIsNotAssessed() {
        assertThatThrownBy(() -> new Gains(CHECKER, before, "axles.coupling-load"))
                .hasMessage(
                        "The limit \"axles.coupling-load\" does not apply here, or is not assessed: there is nothing to"
                                + " gain on. Name another one.");
    }
}
