package org.shelterwright.app.desk.preferences;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.desk.preferences.Preferences.WindowPlace;
import org.shelterwright.app.look.Ground;

class PreferencesFileTest {
    @TempDir
    Path folder;

    @Test
    void whatIsKeptIsThereTheNextDay() {
        PreferencesFile file = new PreferencesFile(folder.resolve("new/folder"));
        file.change(now -> now.withLook(Ground.DARK, 150)
                .withColumns(300, 400)
                .withWindow(new WindowPlace(-5, 10, 1366, 768, true))
                .withPerson("M. Varn")
                .withRecent("/a.json")
                .withKeys(Map.of("edit.undo", List.of("Ctrl+U"))));

        assertThat(new PreferencesFile(folder.resolve("new/folder")).now()).isEqualTo(file.now());
    }

    @Test
    void withoutAFileNothingWasChosen() {
        assertThat(new PreferencesFile(folder).now()).isEqualTo(Preferences.NONE);
    }

    @Test
    void garbageIsPutAsideAndNobodyIsStopped() throws IOException {
        byte[] noise = new byte[4_000];
        for (int seed = 0; seed < 20; seed++) {
            new Random(seed).nextBytes(noise);
            Files.write(folder.resolve("preferences.json"), noise);

            assertThat(new PreferencesFile(folder).now()).as("seed %d", seed).isEqualTo(Preferences.NONE);
            assertThat(folder.resolve("preferences.unreadable.json")).hasBinaryContent(noise);
        }
    }

    @Test
    void halfAFileIsPutAsideToo() throws IOException {
        PreferencesFile file = new PreferencesFile(folder);
        file.change(now -> now.withPerson("M. Varn"));
        String whole = Files.readString(folder.resolve("preferences.json"));
        Files.writeString(folder.resolve("preferences.json"), whole.substring(0, whole.length() / 2));

        assertThat(new PreferencesFile(folder).now()).isEqualTo(Preferences.NONE);
    }

    @Test
    void aFolderThatMayNotBeWrittenStopsNobody() throws IOException {
        Path blocked = Files.writeString(folder.resolve("blocked"), "a file");
        PreferencesFile file = new PreferencesFile(blocked.resolve("below"));

        file.change(now -> now.withPerson("M. Varn"));

        assertThat(file.now().person()).isEqualTo("M. Varn");
    }

    @Test
    void theLatestFileIsFirstAndEachStandsOnce() {
        Preferences preferences = Preferences.NONE;
        for (int i = 0; i < 12; i++) {
            preferences = preferences.withRecent("/" + i).withRecent("/0");
        }

        assertThat(preferences.recent())
                .hasSize(9)
                .startsWith("/0", "/11", "/10")
                .doesNotHaveDuplicates();
    }

    @Test
    void theFolderIsTheOneThatTheSystemWants() {
        assertThat(UserFolder.of("Linux", "/home/m", Map.of())).isEqualTo(Path.of("/home/m/.config/shelterwright"));
        assertThat(UserFolder.of("Linux", "/home/m", Map.of("XDG_CONFIG_HOME", "/cfg")))
                .isEqualTo(Path.of("/cfg/shelterwright"));
        assertThat(UserFolder.of("Linux", "/home/m", Map.of("XDG_CONFIG_HOME", "relative")))
                .isEqualTo(Path.of("/home/m/.config/shelterwright"));
        assertThat(UserFolder.of("Windows 11", "C:/m", Map.of("APPDATA", "C:/m/Roaming")))
                .isEqualTo(Path.of("C:/m/Roaming/Shelterwright"));
        assertThat(UserFolder.of("Mac OS X", "/Users/m", Map.of()))
                .isEqualTo(Path.of("/Users/m/Library/Application Support/Shelterwright"));
    }
}
