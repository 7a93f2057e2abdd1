package org.shelterwright.app.cli.terminal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * What the streams of a process lead to.
 *
 * @param plainResults true if results go to a terminal that shows ASCII only
 * @param plainMessages the same for messages
 * @param live true if somebody watches the messages
 */
public record Traits(boolean plainResults, boolean plainMessages, boolean live) {
    /** Results and messages that go to files or other programs: UTF-8, no progress. */
    public static final Traits PIPED = new Traits(false, false, false);

    /** Looks at this process. */
    public static Traits ofThisProcess() {
        // Without it, Java 22 and later say that there is a console even where there is none.
        System.setProperty("jdk.console", "java.base");
        return of(System.getenv(), terminal(1), terminal(2));
    }

    /**
     * Judges by the environment.
     *
     * @param resultsSeen true if results go to a terminal
     * @param messagesSeen true if messages go to a terminal
     */
    static Traits of(Map<String, String> environment, boolean resultsSeen, boolean messagesSeen) {
        boolean utf8 = utf8(environment);
        boolean dumb = "dumb".equals(environment.get("TERM"));
        boolean watched = !environment.containsKey("CI") && !dumb;
        return new Traits(resultsSeen && !utf8, messagesSeen && !utf8, messagesSeen && watched);
    }

    private static boolean utf8(Map<String, String> environment) {
        for (String name : new String[] {"LC_ALL", "LC_CTYPE", "LANG"}) {
            String value = environment.getOrDefault(name, "");
            if (!value.isEmpty()) {
                return value.toLowerCase(Locale.ROOT).replace("-", "").contains("utf8");
            }
        }
        return false;
    }

    private static boolean terminal(int number) {
        Path link = Path.of("/proc/self/fd/" + number);
        if (Files.isSymbolicLink(link)) {
            try {
                String target = Files.readSymbolicLink(link).toString();
                return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
            } catch (IOException e) {
                return false;
            }
        }
        return System.console() != null;
    }
}
