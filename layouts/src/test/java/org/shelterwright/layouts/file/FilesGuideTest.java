package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.InputFile;

/** The examples of the guide are files that can be read. */
class FilesGuideTest {
    private static final Path GUIDE = Path.of("..", "docs", "user-guide-files.md");

    @Test
    void theExamplesOfTheGuideCanBeRead() throws IOException {
        List<InputFile> examples = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(GUIDE))
                .results()
                .map(FilesGuideTest::file)
                .toList();

        assertThat(examples).hasSize(2);
        CatalogEntries entries = CatalogEntries.read(List.of(examples.get(0)));
        assertThat(entries.items()).hasSize(1);
        assertThat(entries.doubts()).isEmpty();
        assertThat(LayoutFormats.BRIEF.open(examples.get(1)).value().units()).hasSize(2);
    }

    private static InputFile file(MatchResult match) {
        return new InputFile("guide", match.group(1).getBytes(StandardCharsets.UTF_8));
    }
}
