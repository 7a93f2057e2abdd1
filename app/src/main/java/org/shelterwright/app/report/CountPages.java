package org.shelterwright.app.report;

import java.util.List;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.elevation.Codes;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.InPlace;

/** The check list for counting on and counting off: every piece by its place, with boxes to tick, and lines to sign. */
final class CountPages {
    private static final List<Column> HEAD = List.of(
            new Column("Code", "", 16, false),
            new Column("Piece", "", 70, false),
            new Column("Mass", "kg", 16, true),
            new Column("", "", 4, false),
            new Column("On", "", 14, false),
            new Column("Off", "", 14, false),
            new Column("Remark", "", 41, false));

    private final Typeface typeface;
    private final Issue issue;
    private final Codes codes;
    private final Flow flow;

    CountPages(Typeface typeface, Issue issue) {
        this.typeface = typeface;
        this.issue = issue;
        this.codes = new Codes(issue.scene());
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", count on, count off",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.paragraph(
                "Tick each piece as it goes aboard, and again when it comes back. Nothing is loose on the road.");
        int count = 0;
        double sum = 0;
        for (UnitSpec unit : issue.scene().brief().units()) {
            List<InPlace> pieces = issue.scene().interiors().stowed(unit.id());
            if (pieces.isEmpty()) {
                continue;
            }
            flow.need(30);
            flow.heading(unit.name());
            Columns columns = new Columns(typeface, HEAD);
            columns.head(flow);
            for (InPlace piece : pieces) {
                Double kg = piece.piece().mass().massKg();
                sum += kg == null ? 0 : kg;
                count++;
                columns.row(
                        flow,
                        List.of(
                                codes.piece(piece.id()),
                                piece.name() + ", " + codes.where(piece),
                                kg == null ? "?" : Numerals.of(kg, 1),
                                "",
                                "[   ]",
                                "[   ]",
                                ""),
                        false);
            }
        }
        flow.heading("Sum");
        flow.pair("Loose pieces", Integer.toString(count));
        flow.pair("Their mass", Numerals.of(sum, 1) + " kg");
        flow.heading("Signed");
        for (String who : List.of("Counted on by, date, time", "Counted off by, date, time")) {
            flow.gap(4);
            flow.pair(who, "______________________________________________");
        }
        flow.pair("Made with", issue.madeWith());
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        return flow.pages();
    }
}
