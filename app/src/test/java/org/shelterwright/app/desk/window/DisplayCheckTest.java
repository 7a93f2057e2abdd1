package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.json.InputException;

class DisplayCheckTest {
    @Test
    void withoutADisplayThereIsOneSentence() {
        assertThatThrownBy(() -> DisplayCheck.require("Linux", Map.of(), name -> true))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "desk: There is no display to open a window on. Start it in a desktop session, or use check,"
                                + " fit and report.");
    }

    @Test
    void aDisplayThatDoesNotAnswerIsNamed() {
        assertThatThrownBy(() -> DisplayCheck.require("Linux", Map.of("DISPLAY", ":77"), name -> false))
                .isInstanceOf(InputException.class)
                .hasMessage("desk: The display :77 cannot be reached, so no window can be opened. Start it in a desktop"
                        + " session, or use check, fit and report.");
        DisplayCheck.require("Linux", Map.of("DISPLAY", ":77"), name -> name.equals(":77"));
    }

    @Test
    void systemsWithAScreenOfTheirOwnNeedNoName() {
        DisplayCheck.require("Windows 11", Map.of(), name -> false);
        DisplayCheck.require("Mac OS X", Map.of(), name -> false);
    }

    @ParameterizedTest
    @ValueSource(strings = {":9753", ":9753.0", "unix:9753", "/unix:9753"})
    void aLocalDisplayThatIsNotThereIsNotReached(String name) {
        assertThat(DisplayCheck.reachable(name)).isFalse();
    }

    @Test
    void aNameOfAnotherFormIsLeftToTheToolkit() {
        assertThat(DisplayCheck.reachable("decnet::0")).isTrue();
    }
}
