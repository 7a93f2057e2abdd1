package org.shelterwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

class RowTextTest {
    /** Use as the ledger ranks rows by it; a car that has no room left has a capacity below zero. */
    @ParameterizedTest
    @CsvSource({
        "900, 1000, 0.9, CLOSE, 0.90, 0.9",
        "1200, 1000, 1.2, BROKEN, 1.20, 1.2",
        "12, -34.69, 47.69, BROKEN, over,",
        "3, 0, 4, BROKEN, over,",
        "0, 0, 0, MET, '', 0",
        "-2, -1, 0, MET, '', 0"
    })
    void useIsAShareOnlyWhereThereIsACapacity(
            double demand, double capacity, double use, Verdict verdict, String text, Double share) {
        Row row = new Row(
                "mass.gross",
                Subject.MASS,
                "Gross mass",
                List.of(),
                null,
                "always",
                Row.Sense.AT_MOST,
                demand,
                null,
                capacity,
                use,
                "kg",
                verdict,
                "A finding.",
                null,
                new Source("Common practice", null, Source.Trust.COMMON_PRACTICE));

        assertThat(RowText.use(row)).isEqualTo(text);
        assertThat(row.share()).isEqualTo(share);
    }

    @ParameterizedTest
    @CsvSource({"25, 30.2, 25 / 30.2_mm", "25, -21.7, '25 / 0_mm, 21.7 over'", "-3, -1, −3 / −1_mm"})
    void thereIsNoCapacityBelowNothing(double demand, double capacity, String text) {
        Row row = new Row(
                "transport.outline",
                Subject.TRANSPORT,
                "Outline",
                List.of(),
                null,
                "always",
                Row.Sense.AT_LEAST,
                demand,
                null,
                capacity,
                demand > capacity ? 1.5 : 0.5,
                "mm",
                demand > capacity ? Verdict.BROKEN : Verdict.MET,
                "A finding.",
                null,
                new Source("Common practice", null, Source.Trust.COMMON_PRACTICE));

        assertThat(RowText.figures(row)).isEqualTo(text.replace('_', Numerals.GAP));
    }
}
