package org.shelterwright.layouts.ledger.mend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordingTest {
    private static final List<String> FOUR = List.of("F1", "F2", "F3", "F4");

    @Test
    void ofManyNamesTheFirstAreToldAndTheOthersCounted() {
        assertThat(Wording.few(FOUR, 2)).isEqualTo("F1, F2 and 2 more");
        assertThat(Wording.few(FOUR, 3)).isEqualTo("F1, F2, F3 and 1 more");
        assertThat(Wording.few(FOUR, 4)).isEqualTo("F1, F2, F3 and F4");
    }

    @Test
    void aRowOfNamesEndsWithAnd() {
        assertThat(Wording.list(List.of())).isEmpty();
        assertThat(Wording.list(FOUR.subList(0, 1))).isEqualTo("F1");
        assertThat(Wording.list(FOUR.subList(0, 2))).isEqualTo("F1 and F2");
    }

    @Test
    void oneIsCountedWithoutAnS() {
        assertThat(Wording.count(1, "fixing")).isEqualTo("1 fixing");
        assertThat(Wording.count(0, "fixing")).isEqualTo("0 fixings");
    }
}
