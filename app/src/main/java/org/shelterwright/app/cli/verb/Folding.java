package org.shelterwright.app.cli.verb;

import java.nio.file.Files;
import java.util.List;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.report.Document;

/** Puts documents into a folder: all of them or none. */
final class Folding {
    private Folding() {}

    static List<Document> write(List<Document> documents, OutFolder folder) {
        folder.fill(aside -> {
            for (Document document : documents) {
                Files.write(aside.resolve(document.file()), document.bytes());
            }
        });
        return documents;
    }
}
