package org.shelterwright.app.desk.window;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shelterwright.catalog.json.InputException;

/**
 * Asks for a display before the toolkit does, which waits for one that cannot be reached without an end and without a word.
 *
 * <p>Source: X(7), section "Display names" (from memory): {@code [host]:number[.screen]}, a local one by the socket {@code
 * /tmp/.X11-unix/Xnumber}, a distant one by port 6000 + number.
 */
final class DisplayCheck {
    static final String NONE =
            "There is no display to open a window on. Start it in a desktop session, or use check, fit and report.";
    private static final Pattern NAME = Pattern.compile("([^:/]*)(?:/unix)?:(\\d{1,4})(?:\\.\\d+)?");
    private static final int FIRST_PORT = 6000;
    private static final int PATIENCE_MS = 5_000;

    private DisplayCheck() {}

    /**
     * Requires a display where one is needed.
     *
     * @param reachable whether a display of a name answers
     * @throws InputException in one sentence if there is none
     */
    static void require(String system, Map<String, String> environment, Predicate<String> reachable) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows") || name.startsWith("mac")) {
            return;
        }
        String display = environment.getOrDefault("DISPLAY", "").strip();
        if (display.isEmpty()) {
            throw new InputException("desk", NONE);
        }
        if (!reachable.test(display)) {
            throw new InputException(
                    "desk",
                    "The display " + display + " cannot be reached, so no window can be opened. Start it in a desktop"
                            + " session, or use check, fit and report.");
        }
    }

    /** Whether a display answers. One whose name has another form is left to the toolkit. */
    static boolean reachable(String display) {
        Matcher parts = NAME.matcher(display);
        if (!parts.matches()) {
            return true;
        }
        String host = parts.group(1);
        int number = Integer.parseInt(parts.group(2));
        return host.isEmpty() || host.equals("unix") ? local(number) : distant(host, number);
    }

    private static boolean local(int number) {
        Path socket = Path.of("/tmp/.X11-unix/X" + number);
        try (SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX)) {
            return channel.connect(UnixDomainSocketAddress.of(socket));
        } catch (IOException | UnsupportedOperationException e) {
            return abstractly(socket);
        }
    }

    /** Some displays have their socket in the kernel's table only, and no file. */
    private static boolean abstractly(Path socket) {
        try {
            return Files.readString(Path.of("/proc/net/unix")).lines().anyMatch(line -> line.endsWith("@" + socket));
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean distant(String host, int number) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(host, FIRST_PORT + number), PATIENCE_MS);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
