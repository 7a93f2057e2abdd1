package org.shelterwright.app.cli.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TerminalTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void resultsAndMessagesGoToTheirOwnStreamsInUtf8() {
        Terminal terminal = new Terminal(out, err, Traits.PIPED);

        terminal.result("13.1 m²");
        terminal.message("Größe");

        assertThat(out.toString(StandardCharsets.UTF_8).strip()).isEqualTo("13.1 m²");
        assertThat(err.toString(StandardCharsets.UTF_8).strip()).isEqualTo("Größe");
    }

    @Test
    void terminalThatShowsAsciiOnlyGetsAscii() {
        Terminal terminal = new Terminal(out, err, new Traits(true, true, false));

        terminal.result("13.1 m² at 26.5°, ±5 µm, ærø × Größe … 日");

        assertThat(out.toString(StandardCharsets.US_ASCII).strip())
                .isEqualTo("13.1 m2 at 26.5deg, +/-5 um, aero x Grosse ... ?");
    }

    @Test
    void progressIsWrittenOverAndTakenAwayBeforeAnythingElse() {
        Terminal terminal = new Terminal(out, err, new Traits(false, false, true));

        terminal.progress("one two");
        terminal.progress("three");
        terminal.message("done");

        assertThat(err.toString(StandardCharsets.UTF_8).strip()).isEqualTo("one two\rthree  \r     \rdone");
    }

    @Test
    void progressIsNotShownWhereNobodyWatches() {
        Terminal terminal = new Terminal(out, err, Traits.PIPED);

        terminal.progress("one");

        assertThat(err.size()).isZero();
    }

    @Test
    void lostResultsAreRemembered() {
        Terminal terminal = new Terminal(
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        throw new IOException("Broken pipe");
                    }
                },
                err,
                Traits.PIPED);

        terminal.result("x");

        assertThat(terminal.lost()).hasValueSatisfying(e -> assertThat(e).hasMessage("Broken pipe"));
    }

    @Test
    void somebodyWatchesATerminalButNoPipeAndNoBuildServer() {
        Map<String, String> utf8 = Map.of("LANG", "en_GB.UTF-8");

        assertThat(Traits.of(utf8, true, true)).isEqualTo(new Traits(false, false, true));
        assertThat(Traits.of(utf8, true, false)).isEqualTo(Traits.PIPED);
        assertThat(Traits.of(Map.of("LANG", "en_GB.utf8", "CI", "true"), true, true))
                .isEqualTo(Traits.PIPED);
        assertThat(Traits.of(Map.of("LANG", "en_GB.utf8", "TERM", "dumb"), true, true))
                .isEqualTo(Traits.PIPED);
        assertThat(Traits.of(Map.of("LANG", "en_GB.utf8", "LC_ALL", "C"), true, true))
                .isEqualTo(new Traits(true, true, true));
        assertThat(Traits.of(Map.of("LC_ALL", "C"), false, false)).isEqualTo(Traits.PIPED);
    }
}
