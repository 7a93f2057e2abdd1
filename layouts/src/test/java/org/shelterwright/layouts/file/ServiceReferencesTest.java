package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.brief.Brief;

class ServiceReferencesTest {
    private static final String SERVICES = """
            "services": {
              "states": [
                {"id": "day", "name": "by day", "situation": "on-station", "live": ["mains"], "people": 0}
              ],
              "supplies": [
                {"id": "mains", "name": "Mains", "kind": "shore", "current": "ac", "voltageV": 230},
                {
                  "id": "bus", "name": "Bus", "kind": "converter", "current": "dc", "voltageV": 24,
                  "source": "rack-2", "fedFrom": ["mains"]
                }
              ],
              "feeds": [{"unit": "rack-1", "supply": "mains", "off": ["day"]}],
              "apart": [{"a": "rack-1", "b": "rack-2", "reason": "twins"}]
            }""";

    private static final String TEXT = with(SERVICES);

    private static String with(String services) {
        String brief = new String(LayoutFormats.BRIEF.write(SmallPost.brief()), StandardCharsets.UTF_8);
        return brief.replace("\"crew\"", services + ",\n  \"crew\"");
    }

    private static Findings check(String text) {
        Sourced<Brief> read = LayoutFormats.BRIEF.open(new InputFile("b.json", text.getBytes(StandardCharsets.UTF_8)));
        return BriefCheck.of(read.value(), read.places(), SmallPost.CATALOG, List.of());
    }

    @Test
    void findsNothingInSoundServicesAndWritesThemAsTheyWereRead() {
        assertThat(check(TEXT).problems()).isEmpty();

        Brief read = LayoutFormats.BRIEF.read(TEXT.getBytes(StandardCharsets.UTF_8), "b.json");
        assertThat(LayoutFormats.BRIEF.read(LayoutFormats.BRIEF.write(read), "b.json"))
                .isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"live\": [\"mains\"]|\"live\": [\"main\"]|The supply \"main\" is not known. Did you mean \"mains\"?",
                "\"source\": \"rack-2\"|\"source\": \"rack-3\"|The unit \"rack-3\" is not known. Did you mean \"rack-1\"?",
                "\"fedFrom\": [\"mains\"]|\"fedFrom\": [\"mans\"]|The supply \"mans\" is not known. Did you mean \"mains\"?",
                "\"off\": [\"day\"]|\"off\": [\"dy\"]|The state \"dy\" is not known. Did you mean \"day\"?",
                "\"supply\": \"mains\"|\"supply\": \"buss\"|The supply \"buss\" is not known. Did you mean \"bus\"?"
            })
    void tellsWhatTheServicesNameAndIsNotThere(String good, String bad, String sentence) {
        assertThat(TEXT).contains(good);

        assertThat(check(TEXT.replace(good, bad)).problems())
                .extracting(Problem::sentence)
                .containsExactly(sentence);
    }

    @Test
    void suppliesThatFeedEachOtherAreRefused() {
        String circle = TEXT.replace("\"voltageV\": 230}", "\"voltageV\": 230, \"fedFrom\": [\"bus\"]}");

        assertThatThrownBy(() -> check(circle))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(
                        "The supplies bus, mains feed each other in a circle. Give one of them another source.");
    }
}
