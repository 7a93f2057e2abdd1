package org.shelterwright.layouts.ledger.mend;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RankTest {
    @Test
    void theGreaterUseComesFirst() {
        assertThat(Rank.of(60, 100.0, false)).isEqualTo(0.6);
        assertThat(Rank.of(100, 100.0, false)).isEqualTo(1.0);
        assertThat(Rank.of(0, 0.0, false)).isZero();
    }

    @Test
    void whatCannotBeAnsweredComesBeforeWhatIsMet() {
        assertThat(Rank.of(1, null, false))
                .isEqualTo(Rank.of(1, null, true))
                .isEqualTo(Rank.of(1, 100.0, true))
                .isEqualTo(Rank.of(100, 100.0, true))
                .isGreaterThan(Rank.of(100, 100.0, false));
    }

    @Test
    void whatIsBrokenComesBeforeAllElse() {
        assertThat(Rank.of(101, 100.0, true))
                .isEqualTo(Rank.of(101, 100.0, false))
                .isEqualTo(1e9 + 1.01);
        assertThat(Rank.of(1, 0.0, false)).isGreaterThan(Rank.of(101, 100.0, false));
        assertThat(Rank.of(101, 100.0, false)).isGreaterThan(Rank.of(1, null, true));
    }
}
