package org.shelterwright.app.report;

import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.layouts.ledger.Subject;

/** The end of a report on one subject: its findings, what the report leaves out, and with what it was made. */
final class Closing {
    private Closing() {}

    /** Sets both parts on one page if they fit one, so that neither stands alone on the last. */
    static void set(Flow flow, Issue issue, Subject subject, String leftOut) {
        flow.together(() -> {
            flow.heading("Findings");
            LimitTable.findings(flow, issue, subject);
            flow.heading("Issue", 46);
            flow.paragraph(leftOut);
            flow.pair("Made with", issue.madeWith());
            flow.pair("Date of check", issue.particulars().date().toString());
            flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        });
    }
}
