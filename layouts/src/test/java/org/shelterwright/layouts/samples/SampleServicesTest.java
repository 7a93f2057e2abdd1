package org.shelterwright.layouts.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

class SampleServicesTest {
    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void everyRowOfPowerAndHeatIsAssessedAndHolds(String sample) {
        Layout layout = LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout();

        List<Row> rows = Checker.standard().check(layout).rows().stream()
                .filter(row -> row.subject() == Subject.POWER || row.subject() == Subject.HEAT)
                .toList();

        assertThat(rows).hasSizeGreaterThan(11);
        assertThat(rows).extracting(Row::verdict).isSubsetOf(Verdict.MET, Verdict.CLOSE);
    }
}
