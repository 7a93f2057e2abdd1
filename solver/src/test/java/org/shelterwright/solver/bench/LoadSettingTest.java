package org.shelterwright.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.solver.load.model.Support;

class LoadSettingTest {
    private static LoadSetting of(String... args) {
        return LoadSetting.of(args, 0);
    }

    @Test
    void takesWhatIsGivenAndFillsInTheRest() {
        LoadSetting setting =
                of("--date", "2026-01-31", "--problems", "3-4", "--seconds", "1,30", "--support", "full,none");

        assertThat(setting.part()).isEqualTo("classes");
        assertThat(setting.classes()).hasSize(15);
        assertThat(setting.from()).isEqualTo(3);
        assertThat(setting.to()).isEqualTo(4);
        assertThat(setting.seconds()).isEqualTo(List.of(1.0, 30.0));
        assertThat(setting.supports()).containsExactly(Support.FULL, Support.NONE);
        assertThat(setting.cpu()).isFalse();
    }

    @Test
    void refusesWhatItDoesNotKnow() {
        assertThatThrownBy(() -> of("--part", "classes")).hasMessage("Give the date of the measurement with --date.");
        assertThatThrownBy(() -> of("--date", "2026-01-31", "--part", "planes"))
                .hasMessage("\"planes\" is none of classes, growth, practice, cars.");
        assertThatThrownBy(() -> of("--fast", "yes")).hasMessageStartingWith("\"--fast\" is not one of --part, --date");
    }
}
