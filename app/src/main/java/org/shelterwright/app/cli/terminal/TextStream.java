package org.shelterwright.app.cli.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Text in UTF-8 on one stream; remembers the first error instead of losing it. */
final class TextStream {
    private final OutputStream stream;
    private final boolean ascii;
    private @Nullable IOException failure;

    /** @param ascii true to replace every character above ASCII */
    TextStream(OutputStream stream, boolean ascii) {
        this.stream = stream;
        this.ascii = ascii;
    }

    synchronized void write(String text) {
        if (failure != null) {
            return;
        }
        try {
            stream.write((ascii ? PlainText.of(text) : text).getBytes(StandardCharsets.UTF_8));
            stream.flush();
        } catch (IOException e) {
            failure = e;
        }
    }

    synchronized @Nullable IOException failure() {
        return failure;
    }

    /** The same stream for those who need a writer. */
    PrintWriter writer() {
        return new PrintWriter(
                new Writer() {
                    @Override
                    public void write(char[] buffer, int offset, int length) {
                        TextStream.this.write(new String(buffer, offset, length));
                    }

                    @Override
                    public void flush() {}

                    @Override
                    public void close() {}
                },
                true);
    }
}
