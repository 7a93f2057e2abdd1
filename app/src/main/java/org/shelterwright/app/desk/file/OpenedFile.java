package org.shelterwright.app.desk.file;

import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.layout.Layout;

/**
 * What was opened.
 *
 * @param name as it was named: a file, or {@code sample:NAME}
 * @param content what stood in it
 * @param fingerprint what the file held; {@link Fingerprint#NONE} if it has no file of its own
 */
public record OpenedFile<T>(String name, T content, Fingerprint fingerprint) {
    public static OpenedFile<Layout> of(Opened opened) {
        return new OpenedFile<>(opened.name(), opened.layout(), opened.fingerprint());
    }
}
