package org.shelterwright.app.journey;

import java.util.List;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.report.RowText;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.solver.transport.WaysToGo.Way;

/** Ways to go: each piece by itself on each car, with what governs. */
final class WaysPages {
    private static final List<Column> TABLE = List.of(
            new Column("On", "", 56, false),
            new Column("By", "", 13, false),
            new Column("Verdict", "", 21, false),
            new Column("Use", "", 11, true),
            new Column("Governing", "", 74, false));

    private final Typeface typeface;
    private final JourneyIssue issue;
    private final List<Way> ways;
    private final Flow flow;

    WaysPages(Typeface typeface, JourneyIssue issue, List<Way> ways) {
        this.typeface = typeface;
        this.issue = issue;
        this.ways = ways;
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", ways to go",
                "journey " + issue.journey().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        flow.paragraph(
                "Each piece by itself on each car of the catalog, placed and held as proposed, on the journey's leg of that"
                        + " mode or on a plain leg under the usual rules. \"not assessed\" means that a datum of car, way or piece is"
                        + " missing; the governing limit names it.");
        List<String> last = List.of();
        Columns columns = new Columns(typeface, TABLE);
        for (Way way : ways) {
            if (!way.pieces().equals(last)) {
                last = way.pieces();
                flow.heading(issue.names(last));
                columns.head(flow);
            }
            columns.row(
                    flow,
                    List.of(
                            way.car().name(),
                            way.mode().word(),
                            way.verdict().word(),
                            RowText.use(way.governing()),
                            way.governing().title()
                                    + (RowText.figures(way.governing()).isEmpty()
                                            ? ""
                                            : ", " + RowText.figures(way.governing()))),
                    false);
        }
        return flow.pages();
    }
}
