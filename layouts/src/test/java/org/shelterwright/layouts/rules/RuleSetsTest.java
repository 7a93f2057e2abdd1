package org.shelterwright.layouts.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.source.Source;

class RuleSetsTest {
    private static final String TEXT = """
            {
              "format": "shelterwright-rule-set", "version": 1,
              "id": "own", "name": "Own rules", "axleRules": "eu-96-53",
              "rules": [
                {"figure": "access.walkway-width", "value": 600, "source": {"document": "House rule 7", "trust": "stated"}}
              ]
            }
            """;

    @TempDir
    Path folder;

    @Test
    void readsARuleSet() throws IOException {
        RuleSet set = RuleSets.read(Files.writeString(folder.resolve("own.json"), TEXT));

        assertThat(set.axleRules()).isEqualTo(RuleSet.AxleRules.EU_96_53);
        assertThat(set.rules())
                .containsExactly(new Rule(Figure.WALKWAY_WIDTH, 600, Source.stated("House rule 7", null)));
    }

    @Test
    void tellsTheNearestFigure() throws IOException {
        Path file = Files.writeString(folder.resolve("own.json"), TEXT.replace("walkway-width", "walkway-widht"));

        assertThatThrownBy(() -> RuleSets.read(file))
                .isInstanceOf(InputException.class)
                .hasMessage(file
                        + ", line 5, column 16: \"rules[0].figure\" has the value \"access.walkway-widht\", which is"
                        + " not known. Did you mean \"access.walkway-width\"?");
    }

    @Test
    void theBuiltInSetsCanBeRead() {
        assertThat(RuleSets.builtIn()).extracting(RuleSet::id).doesNotHaveDuplicates();
    }
}
