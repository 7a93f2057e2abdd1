package org.shelterwright.app.desk.preferences;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.function.UnaryOperator;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.layouts.file.SafeSave;

/**
 * Keeps the preferences in a file of the user's folder. Preferences are a comfort: a file that cannot be read is put
 * aside and one that cannot be written is let go, and nobody is stopped for it.
 */
public final class PreferencesFile {
    private static final JsonFormat<Preferences> FORMAT =
            JsonFormat.of("shelterwright-preferences", 1, Preferences.class);

    private final Path folder;
    private final Path file;
    private Preferences now;

    /** @param folder is made when something is first kept */
    public PreferencesFile(Path folder) {
        this.folder = folder;
        file = folder.resolve("preferences.json");
        now = read();
    }

    public Preferences now() {
        return now;
    }

    public Path folder() {
        return folder;
    }

    /** Changes and keeps the preferences. */
    public void change(UnaryOperator<Preferences> change) {
        Preferences changed = change.apply(now);
        if (changed.equals(now)) {
            return;
        }
        now = changed;
        try {
            Files.createDirectories(folder);
            new SafeSave().replace(file, FORMAT.write(changed));
        } catch (IOException | InputException e) {
            // They hold until the window closes.
        }
    }

    private Preferences read() {
        if (!Files.exists(file)) {
            return Preferences.NONE;
        }
        try {
            return FORMAT.read(file);
        } catch (InputException e) {
            putAside();
            return Preferences.NONE;
        }
    }

    private void putAside() {
        try {
            Files.move(file, file.resolveSibling("preferences.unreadable.json"), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            // It is then replaced by the next that is kept.
        }
    }
}
