package org.shelterwright.app.desk.space.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NamesTest {
    @Test
    void aNameOfOneWordStandsInOneLine() {
        assertThat(Names.wraps("Desk")).containsExactly(List.of("Desk"));
    }

    @Test
    void aLongerNameIsBrokenWhereItIsLeastWide() {
        assertThat(Names.wraps("Sample refrigerator"))
                .containsExactly(List.of("Sample refrigerator"), List.of("Sample", "refrigerator"));
        assertThat(Names.wraps("Gauge locker, upper"))
                .containsExactly(List.of("Gauge locker, upper"), List.of("Gauge", "locker, upper"));
    }

    @Test
    void ofACountedNameItsLastWordWithTheNumberIsLeft() {
        assertThat(Names.wraps("Telemetry rack 2"))
                .containsExactly(List.of("Telemetry rack 2"), List.of("Telemetry", "rack 2"), List.of("rack 2"));
        assertThat(Names.wraps("Screen 1")).containsExactly(List.of("Screen 1"), List.of("Screen", "1"));
    }
}
