package org.shelterwright.app.report;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects the documents of a report under their numbers. */
final class DocumentSet {

    private static final String CONTENTS = "00-contents.txt";

    private final List<Document> documents = new ArrayList<>();

    void add(int number, String name, String line, byte[] bytes) {
        documents.add(new Document(String.format(Locale.ROOT, "%02d-", number) + name, line, bytes));
    }

    /** Adds all that another has. */
    void add(DocumentSet other) {
        documents.addAll(other.documents);
    }

    /** All documents, after a contents sheet that lists them. */
    List<Document> withContents(Issue issue) {
        StringBuilder text = new StringBuilder();
        line(
                text,
                issue.name() + ": documents of the layout \""
                        + issue.scene().brief().id() + "\"");
        line(text, "");
        line(text, "Verdict        " + issue.verdicts());
        line(text, "Date of check  " + issue.particulars().date());
        line(text, "Revision       " + issue.particulars().revision());
        line(text, "Owner          " + issue.particulars().owner());
        line(text, "Made with      " + issue.madeWith());
        line(text, "");
        int width =
                documents.stream().mapToInt(one -> one.file().length()).max().orElse(0) + 2;
        for (Document document : documents) {
            line(text, document.file() + " ".repeat(width - document.file().length()) + document.line());
        }
        line(text, "");
        line(text, Issue.CAUTION);
        List<Document> all = new ArrayList<>();
        all.add(new Document(CONTENTS, "Contents", text.toString().getBytes(StandardCharsets.UTF_8)));
        all.addAll(documents);
        return List.copyOf(all);
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append('\n');
    }
}
