package org.shelterwright.app.desk.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.edit.PinUnit;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.samples.Samples;

class EntryTest {
    private final Layout sample =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

    @Test
    void whatIsStillToPlaceStandsAboveWhatIsPlaced() {
        Layout layout = new TakeOutUnit("mast-base").apply(sample);

        List<Entry> entries = Entry.of(layout, "");

        assertThat(entries.get(0)).isEqualTo(new Entry.Heading("To place", "1"));
        assertThat(entries.get(1)).isInstanceOfSatisfying(Entry.Unit.class, unit -> {
            assertThat(unit.id()).isEqualTo("mast-base");
            assertThat(unit.placed()).isFalse();
        });
        assertThat(entries.get(2))
                .isInstanceOfSatisfying(
                        Entry.Heading.class,
                        heading -> assertThat(heading.words()).isEqualTo("Placed"));
        assertThat(entries).hasSize(2 + sample.brief().units().size());
    }

    @Test
    void everyTypedWordNarrowsTheListByNameItemGroupOrMass() {
        assertThat(ids(Entry.of(sample, "rack telemetry"))).containsExactly("rack-1", "rack-2");
        assertThat(ids(Entry.of(sample, "  RACK 2 "))).contains("rack-2").doesNotContain("rack-1");
        assertThat(Entry.of(sample, "nothing is called so")).isEmpty();
    }

    @Test
    void aPinnedUnitShowsIt() {
        Layout layout = new PinUnit("desk", Pin.ALL).apply(sample);

        assertThat(Entry.of(layout, "two work places"))
                .filteredOn(entry -> entry instanceof Entry.Unit unit && unit.pinned())
                .hasSize(1);
    }

    private static List<String> ids(List<Entry> entries) {
        return entries.stream()
                .filter(Entry.Unit.class::isInstance)
                .map(entry -> ((Entry.Unit) entry).id())
                .toList();
    }
}
