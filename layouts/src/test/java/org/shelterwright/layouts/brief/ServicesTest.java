package org.shelterwright.layouts.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Situation;

class ServicesTest {
    private static Supply battery(String source, String charger) {
        return new Supply(
                "battery",
                "Battery",
                Supply.Kind.BATTERY,
                Current.DC,
                24,
                null,
                60.0,
                source,
                List.of(),
                charger,
                null);
    }

    private static Feed feed(String unit) {
        return new Feed(unit, "battery", null, List.of(), List.of(), List.of());
    }

    @Test
    void aUnitThatIsGoneIsNamedNoMoreAndItsSupplyLacksItsSource() {
        Services services = new Services(
                null,
                List.of(),
                List.of(battery("box", "charger")),
                List.of(feed("rack"), feed("twin")),
                List.of(new SupplyPair("rack", "twin", "twins")));

        assertThat(services.without("rack").feeds()).containsExactly(feed("twin"));
        assertThat(services.without("rack").apart()).isEmpty();
        assertThat(services.without("box").supplies().get(0).source()).isNull();
        assertThat(services.without("charger").supplies().get(0).charger()).isNull();
        assertThat(services.without("other")).isEqualTo(services);
    }

    @Test
    void theSameIdTwiceIsRefused() {
        assertThatThrownBy(
                        () -> new Services(null, List.of(), List.of(), List.of(feed("rack"), feed("rack")), List.of()))
                .hasMessage("The feed of unit \"rack\" is given twice. Remove or rename one of them.");
    }

    @Test
    void figuresThatCannotBeAreRefused() {
        assertThatThrownBy(() -> new Feed("rack", "mains", 4, List.of(), List.of(), List.of()))
                .hasMessage("The phase of unit \"rack\", 4, must be 1, 2 or 3.");
        assertThatThrownBy(() -> new Weather(20, 25, 18, 0, 0, 0))
                .hasMessage("The greatest room temperature (°C) of 18.0 must be from 25.0 to 60.0.");
        assertThatThrownBy(
                        () -> new OperatingState("day", "by day", Situation.ON_STATION, List.of(), 2, null, null, null))
                .hasMessage("The state \"day\" has people inside: give their activity.");
        assertThatThrownBy(() -> new SupplyPair("rack", "rack", "twins"))
                .hasMessage("The unit \"rack\" cannot be kept off its own supply. Name two units.");
    }
}
