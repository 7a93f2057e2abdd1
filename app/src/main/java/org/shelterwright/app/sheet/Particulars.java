package org.shelterwright.app.sheet;

import java.time.LocalDate;

/**
 * What documents say about themselves and cannot know from a layout.
 *
 * @param owner legal owner of the documents
 * @param createdBy who made them
 * @param approvedBy who approved them
 * @param revision revision index, such as "A"
 * @param date date of the check that they report
 */
public record Particulars(String owner, String createdBy, String approvedBy, String revision, LocalDate date) {

    /** What stands in a field that nobody has filled. */
    public static final String NOT_STATED = "not stated";

    /** Particulars of a first, unapproved issue. */
    public static Particulars draft(LocalDate date) {
        return new Particulars(NOT_STATED, NOT_STATED, "not approved", "A", date);
    }
}
