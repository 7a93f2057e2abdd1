package org.shelterwright.layouts.ledger;

import org.shelterwright.catalog.source.Source;

/** What every limit says of itself, so that a limit class holds only its formula. */
public abstract class NamedLimit {
    private final String id;
    private final Subject subject;
    private final String title;
    private final Severity severity;
    private final Source source;
    private final String heldSentence;

    protected NamedLimit(
            String id, Subject subject, String title, Severity severity, Source source, String heldSentence) {
        this.id = id;
        this.subject = subject;
        this.title = title;
        this.severity = severity;
        this.source = source;
        this.heldSentence = heldSentence;
    }

    public String id() {
        return id;
    }

    public Subject subject() {
        return subject;
    }

    public String title() {
        return title;
    }

    public Severity severity() {
        return severity;
    }

    public Source source() {
        return source;
    }

    public String heldSentence() {
        return heldSentence;
    }
}
