package org.shelterwright.app.desk.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.InputException;

class FailureWordsTest {
    @Test
    void aFailureSaysItsSentence() {
        assertThat(FailureWords.of(new IllegalStateException("The disk is full.")))
                .isEqualTo("The disk is full.");
        assertThat(FailureWords.of(new InputException("a.json", "This is no layout.")))
                .contains("This is no layout.");
    }

    @Test
    void ofManyProblemsTheFirstAreSaidAndTheOthersCounted() {
        var problem =
                new InputException("a.json", "This is no layout.").problems().get(0);

        String words = FailureWords.of(List.of(problem, problem, problem, problem, problem));

        assertThat(words.lines()).hasSize(4);
        assertThat(words).endsWith("\n... and 2 more.");
        assertThat(FailureWords.of(List.of(problem, problem, problem)).lines()).hasSize(3);
    }
}
