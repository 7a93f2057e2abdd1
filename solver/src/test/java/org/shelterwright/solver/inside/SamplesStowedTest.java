package org.shelterwright.solver.inside;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;
import static org.assertj.core.api.Assertions.assertThat;

/**
 * The contents of the stored sample layouts. With {@code -Dsamples.stow=true} they are found anew, with the catalog as it is, and
 * written; units stay where they are.
 */
class SamplesStowedTest {
    private static final Checker CHECKER = Checker.standard();
    private static final Catalog CATALOG = BuiltInCatalog.read();
    private static final long SEED = 7;

    private static Layout stored(String sample) {
        return LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout();
    }

    /** The stored places of the units, with the brief and the catalog as they are now and the pieces stowed. */
    private static Stowing stowed(String sample) {
        Brief brief = LayoutFormats.BRIEF.open(Samples.brief(sample)).value();
        Layout old = stored(sample);
        Layout fresh = old.withAsked(brief, Parts.of(brief, CATALOG)).withContents(Contents.of(brief, CATALOG));
        return new Stower(CHECKER).stow(fresh, SEED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void everyPieceIsPlacedAndEveryRowIsAssessedAndHolds(String sample) throws IOException {
        Stowing stowing = stowed(sample);
        if (Boolean.getBoolean("samples.stow")) {
            Path file = Path.of("../layouts/src/main/resources/org/shelterwright/layouts/samples/" + sample + ".layout.json");
            Files.write(file, LayoutFiles.bytes(stowing.layout()));
        }

        List<Row> rows = stowing.ledger().rows().stream()
                .filter(row -> row.subject() == Subject.RACKS || row.subject() == Subject.STOWAGE)
                .toList();

        assertThat(stowing.toPlace()).isEmpty();
        assertThat(rows).hasSizeGreaterThan(31);
        assertThat(rows).filteredOn(row -> row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED)
                .extracting(Row::finding)
                .isEmpty();
        assertThat(stowing.ledger().rows())
                .filteredOn(row -> row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED)
                .extracting(Row::finding)
                .isEmpty();
    }
}
