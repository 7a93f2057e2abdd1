package org.shelterwright.app.cli.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.Optional;

/**
 * Where the command line prints: results on one stream, messages on another, and progress as one line that is written
 * over, if somebody is there to see it. Safe for several threads.
 */
public final class Terminal {
    private static final String LINE = System.lineSeparator();

    private final TextStream results;
    private final TextStream messages;
    private final boolean live;
    private int shown;

    /**
     * Makes a terminal.
     *
     * @param results stream of results
     * @param messages stream of messages and progress
     * @param traits what the streams lead to
     */
    public Terminal(OutputStream results, OutputStream messages, Traits traits) {
        this.results = new TextStream(results, traits.plainResults());
        this.messages = new TextStream(messages, traits.plainMessages());
        this.live = traits.live();
    }

    /** The terminal of this process. */
    public static Terminal ofThisProcess() {
        return new Terminal(
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err),
                Traits.ofThisProcess());
    }

    /** Prints a line of the result. */
    public synchronized void result(String line) {
        wipe();
        results.write(line + LINE);
    }

    /** Prints a line to the person. */
    public synchronized void message(String line) {
        wipe();
        messages.write(line + LINE);
    }

    /** Whether progress is shown. */
    public boolean live() {
        return live;
    }

    /** Shows how far the work is, in place of what was shown before; nothing if nobody is there to see it. */
    public synchronized void progress(String line) {
        if (live) {
            messages.write("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
            shown = line.length();
        }
    }

    /** Takes the line of progress away. */
    public synchronized void wipe() {
        if (shown > 0) {
            messages.write("\r" + " ".repeat(shown) + "\r");
            shown = 0;
        }
    }

    public PrintWriter resultWriter() {
        return results.writer();
    }

    public PrintWriter messageWriter() {
        return messages.writer();
    }

    /** Why results could not be printed, if they could not. */
    public Optional<IOException> lost() {
        return Optional.ofNullable(results.failure());
    }
}
