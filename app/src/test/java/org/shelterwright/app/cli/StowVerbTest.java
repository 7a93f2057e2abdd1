package org.shelterwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

class StowVerbTest {
    @TempDir
    Path folder;

    @Test
    void stowsThePiecesOfALayoutAndChecksIt() {
        Path out = folder.resolve("out");

        Ran ran = Ran.of("stow", "sample:river-post", "--seed", 7, "--out", out);

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("30 pieces in racks, 28 pieces stowed, 0 pieces without a place.");
        Layout layout = LayoutFiles.read(out.resolve("layout.json")).layout();
        assertThat(layout.contents().places()).hasSize(58);
    }

    @Test
    void takesAListOfPiecesAndTellsWhatWasNotTaken() throws IOException {
        Path list = folder.resolve("tools.csv");
        Files.writeString(
                list, "Name,Depth [mm],Width [mm],Height [mm],Mass [kg]\nPole,3000,60,60,2\nHook,abc,60,60,2\n");

        Ran ran = Ran.of("stow", "sample:river-post", "--pieces", list, "--out", folder.resolve("out"));

        assertThat(ran.status()).isEqualTo(1);
        assertThat(ran.err()).contains(list + ", B3: \"abc\" is no number, and was not used.");
        assertThat(ran.out()).contains("1 piece without a place.", "Without a place: Pole.");
    }

    @Test
    void givesTheResultAsJson() {
        Ran ran = Ran.of("stow", "sample:water-lab", "--json", "--out", folder.resolve("out"));

        assertThat(ran.out()).contains("\"toPlace\" : [ ]", "\"inRacks\" : 10");
    }
}
