package org.shelterwright.layouts.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.file.BriefCheck;
import org.shelterwright.layouts.file.CatalogChanges;
import org.shelterwright.layouts.file.Findings;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.file.OpenedLayout;
import org.shelterwright.layouts.rules.RuleSet;

class SampleFilesTest {
    private static final Catalog CATALOG = BuiltInCatalog.read();
    private static final List<RuleSet> RULE_SETS = Stream.of("shelter-common", "road-eu")
            .map(id -> new RuleSet(id, id, null, List.of()))
            .toList();

    private static InputFile file(String name) throws IOException {
        try (InputStream in = SampleFilesTest.class.getResourceAsStream("/org/shelterwright/layouts/samples/" + name)) {
            assertThat(in).as(name).isNotNull();
            return new InputFile(name, in.readAllBytes());
        }
    }

    private static Sourced<Brief> open(String id) throws IOException {
        return LayoutFormats.BRIEF.open(file(id + ".brief.json"));
    }

    private static Brief brief(String id) throws IOException {
        return open(id).value();
    }

    private static Stream<Item> items(Brief brief) {
        return brief.units().stream().map(unit -> CATALOG.item(unit.item()).orElseThrow());
    }

    private static double fullKg(Item item) {
        Double own = item.mass().massKg();
        assertThat(own).as(item.id()).isNotNull();
        return own + item.tanks().stream().mapToDouble(Tank::fullKg).sum();
    }

    private static double floorShare(Brief brief) {
        Body body = CATALOG.body(brief.body()).orElseThrow();
        double standing = items(brief)
                .filter(item -> item.mounting().surfaces().contains(Surface.FLOOR))
                .mapToDouble(item -> (double) item.size().x() * item.size().y())
                .sum();
        return standing / ((double) body.inside().x() * body.inside().y());
    }

    /** Mass that the carrier may still take when its tanks are full and its crew sits in it (kg), 75 kg a person. */
    private static double payloadKg(Brief brief) {
        Carrier carrier = CATALOG.carrier(brief.carrier()).orElseThrow();
        Double grossKg = carrier.grossRatingKg();
        assertThat(grossKg).isNotNull();
        return grossKg
                - carrier.axles().stream().mapToDouble(Axle::tareKg).sum()
                - carrier.tanks().stream().mapToDouble(Tank::fullKg).sum()
                - 75 * brief.crew();
    }

    private static double loadKg(Brief brief) {
        Double tareKg = CATALOG.body(brief.body()).orElseThrow().tare().massKg();
        assertThat(tareKg).isNotNull();
        return tareKg + items(brief).mapToDouble(SampleFilesTest::fullKg).sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab", "too-much"})
    void readsAndNamesOnlyWhatThereIs(String id) throws IOException {
        Sourced<Brief> read = open(id);

        Findings findings = BriefCheck.of(read.value(), read.places(), CATALOG, RULE_SETS);

        assertThat(read.value().id()).isEqualTo(id);
        assertThat(findings.problems()).isEmpty();
        assertThat(findings.doubts()).isEmpty();
    }

    @Test
    void fillsTheRiverPostWellButNotToTheBrim() throws IOException {
        Brief brief = brief("river-post");

        assertThat(brief.units()).hasSizeBetween(22, 30);
        assertThat(floorShare(brief)).isBetween(0.55, 0.75);
        assertThat(loadKg(brief)).isLessThan(0.9 * payloadKg(brief));
    }

    @Test
    void givesTheWaterLabMoreThanThirtyUnitsWithinThePayload() throws IOException {
        Brief brief = brief("water-lab");

        assertThat(brief.units()).hasSizeBetween(28, 34);
        assertThat(floorShare(brief)).isBetween(0.4, 0.75);
        assertThat(loadKg(brief)).isLessThan(0.9 * payloadKg(brief));
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void keepsALayoutOfTheBriefInStepWithTheCatalog(String id) throws IOException {
        OpenedLayout opened = LayoutFiles.read(file(id + ".layout.json"));

        assertThat(opened.doubts()).isEmpty();
        assertThat(opened.layout().brief()).isEqualTo(brief(id));
        assertThat(opened.layout().placements()).hasSameSizeAs(brief(id).units());
        assertThat(CatalogChanges.of(opened.layout(), CATALOG)).isEmpty();
    }

    @Test
    void asksTooMuchOfFloorAndPayload() throws IOException {
        Brief brief = brief("too-much");

        assertThat(floorShare(brief)).isGreaterThan(1.5);
        assertThat(loadKg(brief)).isGreaterThan(payloadKg(brief));
        assertThat(brief.note()).startsWith("Cannot work, on purpose.");
    }
}
