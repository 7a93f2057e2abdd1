package org.shelterwright.app.desk.window;

import java.time.Duration;
import java.time.Instant;
import org.shelterwright.app.desk.file.OnFile;

/** Says how the layout stands to its file: "saved 2 min ago, 3 changes since". */
final class SavedWords {
    private SavedWords() {}

    static String of(OnFile<?> file, int changes, Instant now) {
        String since = changes == 0 ? "" : changes == 1 ? ", 1 change since" : ", " + changes + " changes since";
        if (file.readOnly() != null) {
            return "read only" + since;
        }
        if (file.path() == null) {
            return changes == 0 ? "not saved yet" : "not saved yet" + since.replace(" since", "");
        }
        return "saved " + ago(Duration.between(file.at(), now)) + since;
    }

    private static String ago(Duration since) {
        if (since.toMinutes() < 1) {
            return "just now";
        }
        return since.toHours() < 1 ? since.toMinutes() + " min ago" : since.toHours() + " h ago";
    }
}
