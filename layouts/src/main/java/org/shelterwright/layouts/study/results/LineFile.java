package org.shelterwright.layouts.study.results;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;

/** The whole lines of a file that is only added to, one by one, so that a long file needs no more memory than a short one. */
final class LineFile implements AutoCloseable {
    private final String name;
    private final InputStream in;
    private long position;
    private int line;
    private byte[] content = new byte[0];

    private LineFile(String name, InputStream in) {
        this.name = name;
        this.in = in;
    }

    static LineFile open(Path file) {
        try {
            return new LineFile(file.toString(), new BufferedInputStream(Files.newInputStream(file), 1 << 16));
        } catch (IOException e) {
            throw new InputException(file.toString(), "The file could not be read (" + e.getMessage() + ").");
        }
    }

    /** Reads the next line; false at the end of the file. What follows the last newline is no line. */
    boolean advance() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            int c = in.read();
            while (c >= 0 && c != '\n') {
                if (bytes.size() >= InputFile.LARGEST) {
                    throw new InputException(
                            name + ", line " + (line + 1), "The line is longer than 20 MB. It is no result of a run.");
                }
                bytes.write(c);
                c = in.read();
            }
            if (c < 0) {
                return false;
            }
        } catch (IOException e) {
            throw new InputException(name, "The file could not be read (" + e.getMessage() + ").");
        }
        line++;
        position += bytes.size() + 1;
        content = bytes.toByteArray();
        return true;
    }

    /** The line that was read last, without its newline. */
    byte[] content() {
        return content;
    }

    /** Number of the line that was read last, from 1; 0 before the first. */
    int line() {
        return line;
    }

    /** Where the line that was read last ends (bytes from the beginning). */
    long position() {
        return position;
    }

    /** Where the line that was read last stands, for messages. */
    String where() {
        return name + ", line " + line;
    }

    @Override
    public void close() {
        try {
            in.close();
        } catch (IOException e) {
            // Nothing was written.
        }
    }
}
