package org.shelterwright.solver.fit.whynot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.access.AccessLimits;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.StandardFitter;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.fit.WhyNot;
import org.shelterwright.solver.fit.planted.PlantedFit;

class WhyNotTest {
    private final Checker checker = new Checker(
            new LimitBook(Stream.<List<Limit>>of(FitLimits.all(), AccessLimits.all())
                    .flatMap(List::stream)
                    .toList()),
            List.of());
    private final Layout question = PlantedFit.of(1, 8, 0.15).question();

    @Test
    void saysNothingWhenEverythingFits() {
        assertThat(fit(question).whyNot()).isNull();
    }

    @Test
    void provesThatAUnitIsTooHigh() {
        Item item = question.item(question.brief().units().get(0));

        WhyNot whyNot =
                explain(with(sized(item, new Size(item.size().x(), item.size().y(), 2_100_000))));

        assertThat(whyNot.proven()).isTrue();
        assertThat(whyNot.reasons().get(0)).contains("is 2100 mm high, but the body is only 2000 mm high inside");
    }

    @Test
    void provesThatTheUnitsFillMoreThanTheBodyHolds() {
        WhyNot whyNot = explain(manyTimes(6));

        assertThat(whyNot.proven()).isTrue();
        assertThat(whyNot.reasons())
                .anySatisfy(reason -> assertThat(reason).startsWith("The solids of all units fill "))
                .anySatisfy(reason -> assertThat(reason).contains("that stand on the floor alone cover"));
    }

    @Test
    void provesThatTheBodyGetsTooHeavy() {
        WhyNot whyNot = explain(breaking(rated(1_000), Figure.WALKWAY_WIDTH, 1_900));

        assertThat(whyNot.proven()).isTrue();
        assertThat(whyNot.reasons().get(0)).contains("but may weigh 1000 kg: leave out at least");
    }

    @Test
    void namesTheOneLimitThatIsInTheWay() {
        WhyNot whyNot = explain(breaking(question, Figure.WALKWAY_HEADROOM, 2_100));

        assertThat(whyNot.proven()).isFalse();
        assertThat(whyNot.reasons())
                .containsExactly(
                        "The body is 2000 mm high inside.",
                        "This was found by trying, not proven: a longer search may find a layout that holds.");
        assertThat(whyNot.relaxations()).containsExactly("access.walkway by 100 mm (Headroom of the body)");
    }

    private WhyNot explain(Layout layout) {
        WhyNot whyNot = fit(layout).whyNot();
        assertThat(whyNot).isNotNull();
        return whyNot;
    }

    private FitResult fit(Layout layout) {
        return new StandardFitter(checker)
                .fit(new FitRequest(layout, 1, Budget.moves(300_000), 2, 1), progress -> {}, new StopSignal());
    }

    private Layout breaking(Layout layout, Figure figure, double value) {
        Map<String, Double> limits = new LinkedHashMap<>(layout.brief().limits());
        limits.put(figure.id(), value);
        return Layout.empty(brief(layout.brief().units(), limits), layout.parts());
    }

    private Layout rated(double ratingKg) {
        Body b = question.body();
        Body body = new Body(
                b.id(),
                b.name(),
                b.inside(),
                b.outside(),
                b.intrusions(),
                b.openings(),
                b.grids(),
                b.drillZones(),
                b.floorZones(),
                b.crossMembers(),
                b.trays(),
                b.entryPanels(),
                b.provisions(),
                b.tare(),
                ratingKg,
                b.note());
        return Layout.empty(
                question.brief(), new Parts(body, null, null, question.parts().items()));
    }

    private Layout manyTimes(int times) {
        List<UnitSpec> units = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            for (UnitSpec unit : question.brief().units()) {
                units.add(new UnitSpec(unit.id() + "-" + i, unit.name(), unit.item(), unit.group()));
            }
        }
        return Layout.empty(brief(units, question.brief().limits()), question.parts());
    }

    private Layout with(Item item) {
        Map<String, Item> items = new LinkedHashMap<>(question.parts().items());
        items.put(item.id(), item);
        return Layout.empty(question.brief(), new Parts(question.body(), null, null, items));
    }

    private Brief brief(List<UnitSpec> units, Map<String, Double> limits) {
        Brief b = question.brief();
        return Brief.named(b.id(), b.name(), b.body())
                .units(units)
                .limits(limits)
                .build();
    }

    private static Item sized(Item i, Size size) {
        return i.but()
                .size(size)
                .solids(List.of())
                .interior(null)
                .bringing(null)
                .build();
    }
}
