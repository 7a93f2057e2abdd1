package org.shelterwright.layouts.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.RandomScenes;

class OfBriefTest {
    private static final class Counted extends NamedLimit implements Limit.OfBrief {
        private int runs;

        Counted() {
            super("test.counted", Subject.POWER, "Counted", Severity.HARD, Source.commonPractice("test"), "Held.");
        }

        @Override
        public void assess(Scene scene, Rows rows) {
            runs++;
            rows.add(rows.draft(this).held("Run."));
        }
    }

    @Test
    void isRunOnceAndNotAgainWhenUnitsMove() {
        Counted limit = new Counted();
        LedgerBuilder live = new LedgerBuilder(new LimitBook(List.of(limit)));
        RandomScenes scenes = new RandomScenes(7);
        Scene scene = scenes.scene(8);

        Ledger first = live.update(scene);
        for (int move = 0; move < 20; move++) {
            scene = scene.with(scenes.move(scene));
            assertThat(live.update(scene)).isEqualTo(first);
        }

        assertThat(limit.runs).isEqualTo(1);
    }

    @Test
    void isRunAgainForAnotherBrief() {
        Counted limit = new Counted();
        LedgerBuilder live = new LedgerBuilder(new LimitBook(List.of(limit)));

        live.update(new RandomScenes(1).scene(8));
        live.update(new RandomScenes(2).scene(8));

        assertThat(limit.runs).isEqualTo(2);
    }

    @Test
    void isLeftOutOfTheLimitsThatPlacesBearOn() {
        assertThat(new LimitBook(List.of(new Counted())).ofPlaces().limits()).isEmpty();
    }
}
