package org.shelterwright.app.desk.preferences;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** The folder of this program among a user's own, as the system wants it. */
public final class UserFolder {
    private UserFolder() {}

    /** Of the user of this process. */
    public static Path ofThisUser() {
        return of(System.getProperty("os.name", ""), System.getProperty("user.home", "."), System.getenv());
    }

    /**
     * Finds the folder.
     *
     * <p>Source: XDG Base Directory Specification, {@code XDG_CONFIG_HOME} (from memory); elsewhere common practice.
     */
    static Path of(String system, String home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return Path.of(environment.getOrDefault("APPDATA", home), "Shelterwright");
        }
        if (name.startsWith("mac")) {
            return Path.of(home, "Library", "Application Support", "Shelterwright");
        }
        String chosen = environment.getOrDefault("XDG_CONFIG_HOME", "");
        return chosen.startsWith("/") ? Path.of(chosen, "shelterwright") : Path.of(home, ".config", "shelterwright");
    }
}
