package org.shelterwright.layouts.ledger.racks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

/** The racks of the sample River Post. */
class FilledBayTest {
    private final Scene scene = Checker.standard()
            .scene(LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
    private final List<Row> rows = Checker.standard().check(scene.layout()).rows().stream()
            .filter(row -> row.subject() == Subject.RACKS)
            .toList();

    @Test
    void aRowIsOfOneBayAtMostAndToldWithoutItsName() {
        List<FilledBay> bays = FilledBay.of(scene);

        assertThat(bays).hasSizeGreaterThan(1);
        for (Row row : rows) {
            List<String> told =
                    bays.stream().flatMap(bay -> bay.subject(row).stream()).toList();
            assertThat(told).as(row.title()).hasSizeLessThanOrEqualTo(1);
            bays.forEach(bay ->
                    assertThat(bay.subject(row).orElse("")).as(row.title()).doesNotContain(bay.name()));
        }
    }

    @Test
    void theLimitsOfABayAreAllFound() {
        for (FilledBay bay : FilledBay.of(scene)) {
            assertThat(rows.stream().map(bay::subject).flatMap(Optional::stream))
                    .as(bay.name())
                    .hasSizeGreaterThan(5)
                    .anyMatch(what -> what.contains("strip"));
        }
    }
}
