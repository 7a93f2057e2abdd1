package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.Shelterwright;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.terminal.Traits;
import org.shelterwright.app.cli.workshop.Interrupts;
import org.shelterwright.solver.fit.Fitter;

class ProgramTest {

    @TempDir
    Path folder;

    @Test
    void versionTellsProgramAndData() {
        Ran ran = Ran.of("--version");

        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .matches("(?s)Shelterwright \\d+\\.\\d+\\.\\d+\\S*\\R"
                        + "Data [0-9a-f]{12} \\(\\d+ items, \\d+ bodies, \\d+ carriers, \\d+ pieces\\)\\R");
    }

    @Test
    void withoutAVerbItSaysWhatThereIs() {
        Ran ran = Ran.of();

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().strip())
                .isEqualTo(
                        "Say what to do: fit, check, stow, route, bolt-down, weigh, report, load, margin, revise, compare, study, desk or catalog. See: shelterwright --help");
    }

    @Test
    void mistypedOptionIsNamedWithTheNearestOne() {
        Ran ran = Ran.of("fit", "sample:river-post", "--alternative", "3");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err())
                .contains("'--alternative'")
                .contains("Did you mean --alternatives?")
                .endsWith("See: shelterwright fit --help" + System.lineSeparator());
    }

    @Test
    void missingFileNameIsAskedFor() {
        Ran ran = Ran.of("check");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err().strip()).isEqualTo("Missing required parameter: 'FILE'. See: shelterwright check --help");
    }

    @Test
    void ourOwnFaultsHaveStatusThreeAndALogWithDetails() throws IOException {
        Fitter broken = (request, observer, stop) -> {
            throw new IllegalStateException("lane 3 lost its way");
        };

        Ran ran = Ran.with(broken, "fit", Briefs.smallPost(folder), "--out", folder.resolve("out"));

        assertThat(ran.status()).isEqualTo(3);
        Matcher log = Pattern.compile(
                        "The program failed, which is its own fault and not yours\\. Details are in (.+?);"
                                + " please report them\\.\\R")
                .matcher(ran.err());
        assertThat(log.matches()).as(ran.err()).isTrue();
        Path details = Path.of(log.group(1));
        assertThat(details).content().contains("lane 3 lost its way", "ProgramTest", "Arguments: [fit, ", "Java ");
        assertThat(folder.resolve("out")).as("nothing is left behind").doesNotExist();
        Files.delete(details);
    }

    @Test
    void traceShowsOurFaultAtOnce() {
        Fitter broken = (request, observer, stop) -> {
            throw new IllegalStateException("lane 3 lost its way");
        };

        Ran ran = Ran.with(broken, "fit", Briefs.smallPost(folder), "--trace", "--out", folder.resolve("out"));

        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err()).contains("IllegalStateException: lane 3 lost its way", "at org.shelterwright");
    }

    @Test
    void errorsOfTheMachineHaveASentenceToo() {
        Fitter hungry = (request, observer, stop) -> {
            throw new OutOfMemoryError();
        };

        Ran ran = Ran.with(hungry, "fit", Briefs.smallPost(folder), "--out", folder.resolve("out"));

        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err().strip())
                .isEqualTo("The program ran out of memory. Give it more, for example with the environment variable"
                        + " SHELTERWRIGHT_JAVA_OPTIONS=-Xmx4g.");
    }

    @Test
    void anArgumentThatALibraryRefusesIsOurFault() {
        Fitter broken = (request, observer, stop) -> {
            UUID.fromString(folder.toString());
            throw new AssertionError("the library has refused before");
        };

        Ran ran = Ran.with(broken, "fit", Briefs.smallPost(folder), "--trace", "--out", folder.resolve("out"));

        assertThat(ran.status()).isEqualTo(3);
        assertThat(ran.err()).contains("IllegalArgumentException", "java.util.UUID");
    }

    @Test
    void resultsThatCannotBePrintedAreReported() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        java.io.ByteArrayOutputStream err = new java.io.ByteArrayOutputStream();

        int status = Shelterwright.program(new Terminal(full, err, Traits.PIPED), Interrupts.NONE)
                .run("catalog", "list")
                .number();

        assertThat(status).isEqualTo(2);
        assertThat(err.toString().strip())
                .isEqualTo("standard output: The disk is full. Make room, or choose a folder on another disk.");
    }
}
