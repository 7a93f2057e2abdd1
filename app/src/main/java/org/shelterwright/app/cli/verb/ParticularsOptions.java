package org.shelterwright.app.cli.verb;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.sheet.Particulars;
import picocli.CommandLine.Option;

/** What stands in the title blocks of documents and is in no layout. */
final class ParticularsOptions {
    @Option(names = "--owner", paramLabel = "NAME", description = "Owner of the documents.")
    private String owner = Particulars.NOT_STATED;

    @Option(names = "--created-by", paramLabel = "NAME", description = "Who made them.")
    private String createdBy = Particulars.NOT_STATED;

    @Option(names = "--approved-by", paramLabel = "NAME", description = "Who approved them.")
    private String approvedBy = "not approved";

    @Option(names = "--revision", paramLabel = "INDEX", description = "Revision (A if not given).")
    private String revision = "A";

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateText.class,
            description = "Date of the check, such as 2026-03-01 (today if not given).")
    private @Nullable LocalDate date;

    Particulars particulars() {
        LocalDate given = date;
        return new Particulars(owner, createdBy, approvedBy, revision, given == null ? LocalDate.now() : given);
    }
}
