package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The user guide tells scripts which keys each verb prints. */
class ScriptGuideTest {
    private static final Path GUIDE = Path.of("..", "docs", "user-guide.md");
    private static final Path HELP = Path.of("src/test/resources/org/shelterwright/app/cli/help");
    private static final Set<String> FIRST = Set.of("format", "version", "program", "data", "status");
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

    @Test
    void everyVerbThatPrintsJsonHasARow() throws IOException {
        Set<String> told = keys().keySet();

        try (Stream<Path> helps = Files.list(HELP)) {
            for (Path help : helps.toList()) {
                String usage = Files.readString(help);
                if (usage.contains("--json")
                        && !usage.lines().findFirst().orElseThrow().endsWith(" VERB")) {
                    String verb = Pattern.compile("(?m)^Usage: shelterwright ((?:[a-z-]+ ?)+)")
                            .matcher(usage)
                            .results()
                            .findFirst()
                            .orElseThrow()
                            .group(1)
                            .trim();
                    assertThat(told).contains(verb);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check sample:river-post",
                "margin room sample:water-lab",
                "margin chance sample:water-lab --draws 1000",
                "catalog list",
                "study run sample:river-post --count"
            })
    void everyKeyThatIsPrintedIsTold(String line) throws IOException {
        List<Object> arguments = new ArrayList<>(List.of((Object[]) line.split(" ")));
        arguments.add("--json");

        Ran ran = Ran.of(arguments.toArray());

        JsonNode printed = JsonMapper.shared().readTree(ran.out());
        String verb = keys().keySet().stream()
                .filter(name -> line.startsWith(name + " ") || line.equals(name))
                .findFirst()
                .orElseThrow();
        Set<String> told = new HashSet<>(keys().getOrDefault(verb, Set.of()));
        told.addAll(FIRST);
        assertThat(told).containsAll(printed.propertyNames());
    }

    /** The keys that the guide tells, by verb. */
    private static Map<String, Set<String>> keys() throws IOException {
        String guide = Files.readString(GUIDE);
        int from = guide.indexOf("| verb | further keys |");
        Map<String, Set<String>> keys = new HashMap<>();
        for (String row : guide.substring(from, guide.indexOf("\n\n", from)).split("\n")) {
            String[] cells = row.split("\\|", 3);
            quoted(cells[1]).forEach(verb -> keys.put(verb, Set.copyOf(quoted(cells[2]))));
        }
        return keys;
    }

    private static Set<String> quoted(String text) {
        return new HashSet<>(QUOTED.matcher(text)
                .results()
                .map((MatchResult one) -> one.group(1))
                .toList());
    }
}
