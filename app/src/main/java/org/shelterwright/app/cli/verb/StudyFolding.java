package org.shelterwright.app.cli.verb;

import java.nio.file.Files;
import java.util.List;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.report.Document;

/** Puts documents of a study into a folder: all of them or none. */
final class StudyFolding {
    private StudyFolding() {}

    static List<Document> write(List<Document> documents, OutFolder folder) {
        folder.fill(aside -> {
            for (Document document : documents) {
                Files.write(aside.resolve(document.file()), document.bytes());
            }
        });
        return documents;
    }
}
