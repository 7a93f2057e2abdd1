package org.shelterwright.layouts.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

/** Limits that are too dear to follow a drag say that they are not assessed, and answer as ever once it ends. */
class AtRestTest {
    private static final Checker CHECKER = Checker.standard();

    @Test
    void whileSomethingMovesTheyAreNotAssessedAndAfterwardsAsIfFromScratch() {
        Scene scene = CHECKER.scene(
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
        LedgerBuilder builder = new LedgerBuilder(CHECKER.book());
        builder.update(scene);
        Placement desk = scene.unit("desk").orElseThrow().placement();
        Place place = desk.station();
        Scene moved = scene.with(desk.withStation(place.with(place.pose().moved(new Point(25 * Lengths.MM, 0, 0)))));

        Ledger moving = builder.whileMoving(moved);
        Ledger rest = builder.update(moved);

        assertThat(moving.of("boltdown.order")).singleElement().satisfies(row -> {
            assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row.finding()).isEqualTo("This is answered once what is being moved is let go.");
        });
        assertThat(moving.of("fit.overlap")).isEqualTo(rest.of("fit.overlap"));
        assertThat(rest).isEqualTo(LedgerBuilder.full(CHECKER.book(), moved));
    }

    @Test
    void answeredElsewhereAndPutTogetherTheyMakeTheFullLedger() {
        for (String sample : List.of("river-post", "water-lab")) {
            Scene scene = CHECKER.scene(
                    LayoutFiles.read(Samples.layout(sample).orElseThrow()).layout());

            Ledger before = new LedgerBuilder(CHECKER.book()).beforeRest(scene);
            List<Row> later = LedgerBuilder.atRest(CHECKER.book(), scene);

            assertThat(before.of("boltdown.order")).singleElement().satisfies(row -> {
                assertThat(row.awaited()).isTrue();
                assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
                assertThat(row.finding()).isEqualTo("This is being worked out.");
            });
            assertThat(LedgerBuilder.together(before, later)).as(sample).isEqualTo(CHECKER.check(scene.layout()));
        }
    }
}
