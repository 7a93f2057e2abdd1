package org.shelterwright.layouts.study.results;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.BitSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.study.SealedStudy;

/**
 * The results of a study while they come: each is written as one line and forced to the disk before the next, so that at any
 * moment, even when the power fails, all results but the one being written are safe. One process at a time may add. Safe for
 * several threads.
 */
public final class ResultsFile implements AutoCloseable {
    private final Path file;
    private final FileChannel channel;
    private final Writing writing;
    private final BitSet done = new BitSet();
    private long end;

    /** Writes bytes at the end of a channel and forces them to the disk. */
    @FunctionalInterface
    interface Writing {
        void append(FileChannel channel, ByteBuffer bytes) throws IOException;
    }

    private ResultsFile(Path file, FileChannel channel, Writing writing) {
        this.file = file;
        this.channel = channel;
        this.writing = writing;
    }

    /**
     * Opens the results of a study for adding, and makes the file if it is not there. A last line that was cut off is taken away.
     *
     * @throws InputException if another process is adding, the file is of another study or damaged, or cannot be written
     */
    public static ResultsFile open(Path file, SealedStudy study) {
        return open(file, study, ResultsFile::append);
    }

    static ResultsFile open(Path file, SealedStudy study, Writing writing) {
        @Nullable FileChannel channel = null;
        try {
            channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            requireAlone(file, channel);
            ResultsFile results = new ResultsFile(file, channel, writing);
            results.begin(study);
            return results;
        } catch (IOException e) {
            close(channel);
            throw new InputException(
                    file.toString(), "The file of results cannot be written (" + e.getMessage() + ").");
        } catch (RuntimeException e) {
            close(channel);
            throw e;
        }
    }

    /**
     * Reads the results that there are, in the order in which they came.
     *
     * @throws InputException if the file is of another study or damaged
     */
    public static void read(Path file, SealedStudy study, Consumer<RunResult> each) {
        new ResultsReader(file, study).read(each);
    }

    /** Whether there is a result of a run. */
    public synchronized boolean holds(int run) {
        return done.get(run);
    }

    /** How many results there are. */
    public synchronized int count() {
        return done.cardinality();
    }

    /**
     * Adds a result, unless there is one of this run.
     *
     * @return whether it was added
     * @throws InputException if it cannot be written; the results before it are safe
     */
    public synchronized boolean add(RunResult result) {
        if (done.get(result.run())) {
            return false;
        }
        write(ResultFormats.RUN.canonical(result), "the result of run " + result.run());
        done.set(result.run());
        return true;
    }

    private void begin(SealedStudy study) throws IOException {
        end = new ResultsReader(file, study).read(result -> done.set(result.run()));
        channel.truncate(end);
        channel.position(end);
        if (end == 0) {
            write(ResultFormats.HEAD.canonical(ResultsHead.of(study)), "the head of the results");
        }
    }

    private void write(String line, String what) {
        byte[] bytes = (line + "\n").getBytes(StandardCharsets.UTF_8);
        try {
            writing.append(channel, ByteBuffer.wrap(bytes));
            end += bytes.length;
        } catch (IOException e) {
            takeBack();
            String reason = String.valueOf(e.getMessage());
            boolean full =
                    reason.contains("No space left") || reason.contains("not enough space") || reason.contains("quota");
            throw new InputException(
                    file.toString(),
                    (full ? "The disk is full: " + what : "Writing failed (" + reason + "): " + what)
                            + " could not be kept; those before it are safe. "
                            + (full ? "Make room and start again" : "Start again")
                            + ": the study goes on where it ended.");
        }
    }

    /** What was written of a line is taken away, so that the next one does not begin in its middle. */
    private void takeBack() {
        try {
            channel.truncate(end);
            channel.position(end);
        } catch (IOException e) {
            // The next start takes it away.
        }
    }

    private static void append(FileChannel channel, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
        channel.force(false);
    }

    private static void requireAlone(Path file, FileChannel channel) throws IOException {
        @Nullable FileLock lock;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            lock = null;
        }
        if (lock == null) {
            throw new InputException(
                    file.toString(),
                    "Another run of this study is adding its results. Wait for it to end, or stop it.");
        }
    }

    @Override
    public void close() {
        close(channel);
    }

    private static void close(@Nullable FileChannel channel) {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            // Every line was forced to the disk when it was written.
        }
    }
}
