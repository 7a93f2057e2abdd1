package org.shelterwright.app.desk.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Says that a window works on a file, by a locked file beside it. The system lets go of it when the process ends, however
 * it ends. Advice among windows of this program only: no other is kept from the file.
 */
final class Claim implements AutoCloseable {
    private final Path lockFile;
    private final @Nullable FileChannel channel;

    private Claim(Path lockFile, @Nullable FileChannel channel) {
        this.lockFile = lockFile;
        this.channel = channel;
    }

    /**
     * Claims a file, unless another window has. Where no file can be made beside it, nobody can tell, and the claim holds.
     */
    static Optional<Claim> on(Path file) {
        Path lockFile = file.resolveSibling("." + file.getFileName() + ".lock");
        FileChannel channel = null;
        try {
            channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = channel.tryLock();
            if (lock == null) {
                channel.close();
                return Optional.empty();
            }
            String words = System.getProperty("user.name", "somebody") + " since "
                    + LocalDateTime.now(ZoneId.systemDefault()).format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm"));
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(words.getBytes(StandardCharsets.UTF_8)));
            return Optional.of(new Claim(lockFile, channel));
        } catch (OverlappingFileLockException e) {
            closeQuietly(channel);
            return Optional.empty();
        } catch (IOException e) {
            closeQuietly(channel);
            return Optional.of(new Claim(lockFile, null));
        }
    }

    /** Who holds the claim on a file, such as "mara since 2026-03-01 14:02". */
    static String holder(Path file) {
        try {
            String words = Files.readString(file.resolveSibling("." + file.getFileName() + ".lock"));
            return words.length() > 80 || words.isBlank() ? "somebody" : words.strip();
        } catch (IOException e) {
            return "somebody";
        }
    }

    @Override
    public void close() {
        if (channel == null) {
            return;
        }
        try {
            Files.deleteIfExists(lockFile);
        } catch (IOException e) {
            // A lock file that nobody holds says nothing.
        }
        closeQuietly(channel);
    }

    private static void closeQuietly(@Nullable FileChannel channel) {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            // It is gone either way.
        }
    }
}
