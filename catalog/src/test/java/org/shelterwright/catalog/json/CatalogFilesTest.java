package org.shelterwright.catalog.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;

class CatalogFilesTest {
    @TempDir
    Path folder;

    private static String item(String id, String name) {
        return """
                {
                  "format": "shelterwright-item", "version": 1,
                  "id": "%s", "name": "%s", "kind": "table", "material": "wood", "size": [600, 1200, 740],
                  "mounting": {"surfaces": ["on-unit", "floor"]},
                  "mass": {"massKg": 21.5, "centre": [300, 600, 500], "basis": "weighed"}
                }
                """.formatted(id, name);
    }

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private static <T> void assertReadsBack(JsonFormat<T> format, T entry) {
        assertThat(format.read(format.write(entry), "written")).isEqualTo(entry);
    }

    @Test
    void readsAnItemWithOnlyWhatIsNeeded() throws IOException {
        Item item = CatalogFormats.ITEM.read(write("t.json", item("table-1", "Table")));

        assertThat(item.kind()).isEqualTo(ItemKind.TABLE);
        assertThat(item.material()).isEqualTo(Material.WOOD);
        assertThat(item.size()).isEqualTo(Size.ofMm(600, 1200, 740));
        assertThat(item.mounting().surfaces()).containsExactlyInAnyOrder(Surface.FLOOR, Surface.ON_UNIT);
        assertThat(item.turns()).containsExactlyInAnyOrder(QuarterTurn.values());
        assertThat(CatalogFormats.ITEM.read(CatalogFormats.ITEM.write(item), "again"))
                .isEqualTo(item);
    }

    @Test
    void readsAFolderAndItsFoldersOverAnotherCatalog() throws IOException {
        write("a/own.json", item("table-1", "Own table"));
        write("b/two.json", item("table-2", "Second table"));
        write("notes.txt", "not an entry");
        Item old = CatalogFormats.ITEM.read(item("table-1", "Old table").getBytes(StandardCharsets.UTF_8), "old.json");

        Catalog merged = CatalogFolder.read(folder).over(Catalog.of(List.of(old), List.of(), List.of()));

        assertThat(merged.items()).extracting(Item::name).containsExactly("Own table", "Second table");
    }

    @Test
    void tellsTheProblemsOfAllFilesAndBothPlacesOfADoubleId() throws IOException {
        Path first = write("a.json", item("table-1", "Table"));
        Path second = write("b.json", item("table-1", "Table too"));
        Path wrong = write("c.json", "{\"format\": \"shelterwright-itm\", \"version\": 1}");

        assertThatThrownBy(() -> CatalogFolder.read(folder))
                .isInstanceOf(InputException.class)
                .hasMessage(String.join(
                        System.lineSeparator(),
                        second + ", line 3, column 9: The item id \"table-1\" is already given in " + first
                                + ", line 3, column 9. Rename or remove one of them.",
                        wrong
                                + ", line 1, column 12: This is a \"shelterwright-itm\" file, which is no catalog entry. Did"
                                + " you mean \"shelterwright-item\"? Correct it or move the file elsewhere."));
    }

    @Test
    void refusesAFolderThatIsNotThere() {
        Path missing = folder.resolve("no");

        assertThatThrownBy(() -> CatalogFolder.read(missing))
                .hasMessage(missing + ": There is no such folder. Name a folder that holds catalog entries.");
    }

    @Test
    void everyBuiltInEntryReadsBackAsItWasWritten() {
        CatalogEntries entries = BuiltInCatalog.entries();

        assertThat(entries.doubts()).isEmpty();
        assertThat(entries.items()).allSatisfy(one -> assertReadsBack(CatalogFormats.ITEM, one));
        assertThat(entries.bodies()).allSatisfy(one -> assertReadsBack(CatalogFormats.BODY, one));
        assertThat(entries.carriers()).allSatisfy(one -> assertReadsBack(CatalogFormats.CARRIER, one));
        assertThat(entries.fasteners()).allSatisfy(one -> assertReadsBack(CatalogFormats.FASTENERS, one));
    }

    @Test
    void findsResourcesInAJarAsInAFolder() throws Exception {
        String name = BuiltInCatalog.class.getName().replace('.', '/') + ".class";
        Path jar = folder.resolve("a jar with spaces.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out)) {
            put(
                    entries,
                    name,
                    BuiltInCatalog.class
                            .getResourceAsStream("BuiltInCatalog.class")
                            .readAllBytes());
            put(
                    entries,
                    "org/shelterwright/catalog/builtin/items/table-1.json",
                    item("table-1", "Table").getBytes(StandardCharsets.UTF_8));
        }
        try (URLClassLoader loader = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
            Class<?> anchor = loader.loadClass(BuiltInCatalog.class.getName());

            List<InputFile> found = ResourceFolder.below(anchor);

            assertThat(found).extracting(InputFile::name).containsExactly("built-in items/table-1.json");
            assertThat(CatalogEntries.read(found).items()).hasSize(1);
        }
    }

    @Test
    void hashesWhatAnEntrySaysAndNotHowItIsLaidOut() {
        String text = item("table-1", "Table");
        Item item = CatalogFormats.ITEM.read(text.getBytes(StandardCharsets.UTF_8), "a");
        Item same = CatalogFormats.ITEM.read(
                text.replaceAll("\\s+", " ")
                        .replace("\"on-unit\", \"floor\"", "\"floor\", \"on-unit\"")
                        .getBytes(StandardCharsets.UTF_8),
                "b");
        Item other = CatalogFormats.ITEM.read(text.replace("21.5", "21.6").getBytes(StandardCharsets.UTF_8), "c");

        assertThat(ContentHash.of(CatalogFormats.ITEM, item))
                .hasSize(64)
                .isEqualTo(ContentHash.of(CatalogFormats.ITEM, same))
                .isNotEqualTo(ContentHash.of(CatalogFormats.ITEM, other));
    }

    @Test
    void hashesAsPublished() {
        // FIPS 180-2, appendix B.1: SHA-256 of "abc".
        assertThat(ContentHash.of("abc".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    private static void put(JarOutputStream jar, String name, byte[] bytes) throws IOException {
        jar.putNextEntry(new ZipEntry(name));
        jar.write(bytes);
        jar.closeEntry();
    }
}
