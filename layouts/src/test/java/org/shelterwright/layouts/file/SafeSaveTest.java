package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.json.InputException;

class SafeSaveTest {
    private static final byte[] OLD = {'o', 'l', 'd'};
    private static final byte[] NEW = {'n', 'e', 'w'};

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("post.layout.json");
    }

    private static void assertRefused(SafeSave save, Path file, Fingerprint expected, String sentence) {
        assertThatThrownBy(() -> save.save(file, NEW, expected))
                .isInstanceOf(InputException.class)
                .hasMessage(file + ": " + sentence);
    }

    private void assertOnly(String... names) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(one -> one.getFileName().toString())).containsExactlyInAnyOrder(names);
        }
    }

    @Test
    void savesANewFileAndNothingElse() throws IOException {
        Fingerprint held = new SafeSave().save(file, NEW, Fingerprint.NONE);

        assertThat(file).hasBinaryContent(NEW);
        assertThat(held).isEqualTo(Fingerprint.of(file));
        assertOnly("post.layout.json");
    }

    @Test
    void keepsThePreviousContent() throws IOException {
        Fingerprint first = new SafeSave().save(file, OLD, Fingerprint.NONE);
        Fingerprint second = new SafeSave().save(file, NEW, first);
        new SafeSave().save(file, OLD, second);

        assertThat(file).hasBinaryContent(OLD);
        assertThat(SafeSave.previous(file)).hasBinaryContent(NEW);
        assertOnly("post.layout.json", "post.layout.previous.json");
    }

    @Test
    void replacesAFileOfTheProgramAndKeepsNothingOfIt() throws IOException {
        Files.writeString(file, "whatever");

        Fingerprint held = new SafeSave().replace(file, NEW);

        assertThat(file).hasBinaryContent(NEW);
        assertThat(held).isEqualTo(Fingerprint.of(file));
        assertOnly("post.layout.json");
    }

    @Test
    void refusesAFileThatAnotherChanged() throws IOException {
        Fingerprint read = new SafeSave().save(file, OLD, Fingerprint.NONE);
        Files.writeString(file, "other");

        assertRefused(
                new SafeSave(),
                file,
                read,
                "The file was changed by another since it was read. Save under another name, or read it again.");
        assertThat(file).hasContent("other");
        assertOnly("post.layout.json");
    }

    @Test
    void refusesAFileThatIsThereAlreadyOrGone() throws IOException {
        Fingerprint read = new SafeSave().save(file, OLD, Fingerprint.NONE);

        assertRefused(
                new SafeSave(),
                file,
                Fingerprint.NONE,
                "There is a file of this name already. Save under another name, or remove it first.");
        Files.delete(file);
        assertRefused(new SafeSave(), file, read, "The file was removed since it was read. Save under another name.");
    }

    @Test
    void refusesAFolderThatIsNotThere() {
        Path missing = folder.resolve("no").resolve("a.json");

        assertRefused(
                new SafeSave(),
                missing,
                Fingerprint.NONE,
                "There is no folder " + missing.getParent() + " to save into. Make it, or name another.");
    }

    @Test
    void leavesEverythingAsItWasOnAFullDisk() throws IOException {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "a device that is always full");
        Fingerprint read = new SafeSave().save(file, OLD, Fingerprint.NONE);

        assertRefused(
                new SafeSave(ignored -> FileChannel.open(full, StandardOpenOption.WRITE)),
                file,
                read,
                "The disk is full: 0.0 kB could not be saved. Nothing was changed. Make room, or save elsewhere.");
        assertThat(file).hasBinaryContent(OLD);
        assertOnly("post.layout.json");
    }

    @Test
    void leavesEverythingAsItWasWhenWritingIsForbidden() throws IOException {
        Fingerprint read = new SafeSave().save(file, OLD, Fingerprint.NONE);
        SafeSave forbidden = new SafeSave(fresh -> {
            throw new AccessDeniedException(fresh.toString());
        });

        assertRefused(
                forbidden,
                file,
                read,
                "The folder " + folder.toRealPath()
                        + " may not be written to. Nothing was changed. Save into another folder.");
        assertThat(file).hasBinaryContent(OLD);
        assertOnly("post.layout.json");
    }

    @Test
    void theOldContentIsWholeWhileTheNewOneIsWritten() throws IOException {
        Fingerprint read = new SafeSave().save(file, OLD, Fingerprint.NONE);
        SafeSave watched = new SafeSave(fresh -> {
            assertThat(file).hasBinaryContent(OLD);
            assertThat(fresh.toAbsolutePath().getParent()).isEqualTo(folder.toRealPath());
            return FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        });

        watched.save(file, NEW, read);

        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void writesThroughALinkAndLeavesTheLink() throws IOException {
        Path real = Files.createDirectory(folder.resolve("real")).resolve("a.json");
        Files.write(real, OLD);
        Files.createSymbolicLink(file, real);

        new SafeSave().save(file, NEW, Fingerprint.of(OLD));

        assertThat(file).isSymbolicLink();
        assertThat(real).hasBinaryContent(NEW);
        assertThat(SafeSave.previous(real)).hasBinaryContent(OLD);
    }
}
