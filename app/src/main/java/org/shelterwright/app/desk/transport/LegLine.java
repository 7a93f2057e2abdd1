package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.report.RowText;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.transport.Leg;

/**
 * A leg of the journey in a few words.
 *
 * @param title such as "2 Rail, 214 km"
 * @param way from where to where
 * @param verdict the worst of its rows
 * @param count such as "2 close" or "all met"
 * @param governing title of its tightest row
 * @param figure use of that row, or what it is
 */
record LegLine(int number, String title, String way, Verdict verdict, String count, String governing, String figure) {
    static List<LegLine> of(JourneyStanding now) {
        List<LegLine> lines = new ArrayList<>();
        for (LegLedger one : now.ledger().legs()) {
            Leg leg = one.leg();
            Verdict worst = one.ledger().worst();
            String mode = leg.mode().word();
            Double km = leg.distanceKm();
            Row row = one.ledger().rows().isEmpty() ? null : one.ledger().rows().get(0);
            lines.add(new LegLine(
                    one.number(),
                    one.number() + "  " + Character.toUpperCase(mode.charAt(0)) + mode.substring(1)
                            + (km == null ? "" : ", " + Numerals.short3(km) + Numerals.GAP + "km"),
                    leg.from() + " \u2013 " + leg.to(),
                    worst,
                    worst == Verdict.MET ? "all met" : one.ledger().count(worst) + " " + worst.word(),
                    row == null ? "" : row.title(),
                    row == null ? "" : row.verdict() == Verdict.NOT_ASSESSED ? "data missing" : RowText.use(row)));
        }
        return lines;
    }
}
