package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Rectangle2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeptLookTest {
    @ParameterizedTest
    @CsvSource({"1366, 768, true", "1600, 1000, true", "1920, 1000, true", "1920, 1080, false", "2560, 1440, false"})
    void aFirstWindowFillsAScreenThatIsHardlyLarger(double width, double height, boolean fills) {
        assertThat(KeptLook.fills(new Rectangle2D(0, 0, width, height))).isEqualTo(fills);
    }
}
