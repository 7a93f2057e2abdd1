package org.shelterwright.app.about;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ProgramVersionTest {

    @Test
    void theBuildWritesItsVersionIntoTheProgram() {
        assertThat(ProgramVersion.ofThisBuild().line()).matches("Shelterwright \\d+\\.\\d+\\.\\d+.*");
    }

    @Test
    void aBlankNumberIsRefused() {
        assertThatThrownBy(() -> new ProgramVersion(" "))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("blank");
    }
}
