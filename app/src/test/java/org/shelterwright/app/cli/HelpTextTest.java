package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Help texts are part of what people rely on: run with -Dhelp.write=true to take over a wanted change. */
class HelpTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "fit",
                "check",
                "stow",
                "route",
                "bolt-down",
                "weigh",
                "report",
                "load",
                "margin",
                "margin room",
                "margin growth",
                "margin gain",
                "margin chance",
                "revise",
                "compare",
                "study",
                "study run",
                "study show",
                "study compare",
                "study open",
                "desk",
                "catalog",
                "catalog list",
                "catalog show",
                "catalog check",
                "catalog import"
            })
    void helpOfEachVerbIsAsWritten(String verb) throws IOException {
        List<Object> arguments = new ArrayList<>(verb.isEmpty() ? List.of() : List.of((Object[]) verb.split(" ")));
        arguments.add("--help");

        Ran ran = Ran.of(arguments.toArray());

        assertThat(ran.status()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .as("fits a terminal of 100 columns")
                .satisfies(text -> assertThat(text.lines())
                        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100)));
        Path golden = Path.of(
                "src/test/resources/org/shelterwright/app/cli/help",
                verb.isEmpty() ? "shelterwright.txt" : verb.replace(' ', '-') + ".txt");
        if (Boolean.getBoolean("help.write")) {
            Files.writeString(golden, ran.out());
        }
        assertThat(ran.out()).isEqualToNormalizingNewlines(Files.readString(golden));
    }
}
