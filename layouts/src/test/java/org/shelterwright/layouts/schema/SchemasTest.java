package org.shelterwright.layouts.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.ResourceFolder;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord;
import org.shelterwright.layouts.asbuilt.Weighing;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.file.SmallPost;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.study.StudyFormats;
import org.shelterwright.layouts.study.results.ResultFormats;

/**
 * Holds the schemas under {@code docs/schemas} equal to the records, and files equal to the schemas. After a change of a
 * record, renew the schemas with {@code mvn -pl layouts -am test -Dtest=SchemasTest
 * -Dsurefire.failIfNoSpecifiedTests=false -Dshelterwright.schemas.renew=true}.
 */
class SchemasTest {
    private static final Path FOLDER = Path.of("..", "docs", "schemas");

    static Stream<JsonFormat<?>> formats() {
        return Stream.of(
                CatalogFormats.ITEM,
                CatalogFormats.BODY,
                CatalogFormats.CARRIER,
                CatalogFormats.FASTENERS,
                CatalogFormats.CABLE,
                CatalogFormats.CONDUCTORS,
                CatalogFormats.PIECE,
                CatalogFormats.TRANSIT_CAR,
                CatalogFormats.OUTLINE,
                CatalogFormats.LASHING,
                CatalogFormats.LINE_CATEGORIES,
                CatalogFormats.FRICTION,
                CatalogFormats.WAGON_CLASSES,
                LayoutFormats.BRIEF,
                LayoutFormats.LAYOUT,
                JourneyFiles.FORMAT,
                RuleSets.FORMAT,
                StudyFormats.STUDY,
                StudyFormats.SEALED,
                ResultFormats.HEAD,
                ResultFormats.RUN,
                AsBuiltRecord.FORMAT,
                Weighing.FORMAT);
    }

    private static Path file(JsonFormat<?> format) {
        return FOLDER.resolve(format.name().replace("shelterwright-", "") + ".schema.json");
    }

    private static List<String> faults(JsonFormat<?> format, String text) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(file(format)));
        return schema.validate(text, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("formats")
    void theSchemaInTheDocumentsIsThatOfTheRecord(JsonFormat<?> format) throws IOException {
        String generated = SchemaGeneration.of(format);
        if (Boolean.getBoolean("shelterwright.schemas.renew")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file(format), generated);
        }

        assertThat(Files.readString(file(format)))
                .as("schema of %s; see the class comment for how to renew it", format.name())
                .isEqualTo(generated);
    }

    @Test
    void filesThatTheProgramWritesFollowTheSchemas() throws IOException {
        assertThat(faults(
                        LayoutFormats.LAYOUT,
                        new String(LayoutFiles.bytes(SmallPost.layout()), StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(faults(
                        LayoutFormats.BRIEF,
                        new String(LayoutFormats.BRIEF.write(SmallPost.brief()), StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @Test
    void filesThatComeWithTheProgramFollowTheSchemas() throws IOException {
        List<InputFile> files = new ArrayList<>(ResourceFolder.below(BuiltInCatalog.class));
        files.addAll(ResourceFolder.below(RuleSets.class));
        files.addAll(samples());
        for (InputFile file : files) {
            String text = new String(file.bytes(), StandardCharsets.UTF_8);
            JsonFormat<?> format = formats()
                    .filter(one -> text.contains("\"" + one.name() + "\""))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(file.name() + " has no known format"));
            assertThat(faults(format, text)).as(file.name()).isEmpty();
        }
    }

    @Test
    void theSchemasRefuseUnknownAndMissingKeysAndWrongTypes() throws IOException {
        String brief = new String(LayoutFormats.BRIEF.write(SmallPost.brief()), StandardCharsets.UTF_8);

        assertThat(faults(LayoutFormats.BRIEF, brief.replace("\"crew\"", "\"crow\"")))
                .hasSize(2)
                .anyMatch(fault -> fault.contains("crow"))
                .anyMatch(fault -> fault.contains("crew"));
        assertThat(faults(LayoutFormats.BRIEF, brief.replace("\"near\"", "\"nearly\"")))
                .hasSize(1);
        assertThat(faults(LayoutFormats.BRIEF, brief.replace("\"yaw\": 0", "\"yaw\": 45")))
                .hasSize(1);
        assertThat(faults(LayoutFormats.BRIEF, brief.replace("\"version\": 1", "\"version\": 2")))
                .hasSize(1);
    }

    private static List<InputFile> samples() throws IOException {
        Path folder = Path.of("src", "main", "resources", "org", "shelterwright", "layouts", "samples");
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .map(InputFile::read)
                    .toList();
        }
    }
}
