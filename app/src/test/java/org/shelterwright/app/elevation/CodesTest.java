package org.shelterwright.app.elevation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CodesTest {
    @Test
    void lettersGoOnAfterTheLastOfTheAlphabet() {
        assertThat(Codes.letters(0)).isEqualTo("A");
        assertThat(Codes.letters(25)).isEqualTo("Z");
        assertThat(Codes.letters(26)).isEqualTo("AA");
        assertThat(Codes.letters(27)).isEqualTo("AB");
        assertThat(Codes.letters(26 + 26 * 26)).isEqualTo("AAA");
    }

    @Test
    void noTwoPlacesShareTheirLetters() {
        assertThat(IntStream.range(0, 2000).mapToObj(Codes::letters)).doesNotHaveDuplicates();
    }
}
