package org.shelterwright.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class SettingTest {
    @Test
    void takesWhatIsGivenAndFillsInTheRest() {
        Setting setting = Setting.of(new String[] {"planted", "--date", "2026-01-31", "--seed", "7"}, 1);

        assertThat(setting).isEqualTo(new Setting("2026-01-31", 7, Duration.ofMinutes(12), Path.of("docs/benchmarks")));
    }

    @Test
    void asksForTheDate() {
        assertThatThrownBy(() -> Setting.of(new String[] {"planted"}, 1))
                .hasMessage("Give the date of the measurement with --date.");
    }

    @Test
    void refusesAnOptionThatThereIsNot() {
        assertThatThrownBy(() -> Setting.of(new String[] {"planted", "--fast", "yes"}, 1))
                .hasMessage("\"--fast\" is not one of --date, --seed, --minutes, --out with a value.");
    }
}
