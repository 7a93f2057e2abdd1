package org.shelterwright.app.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.revision.UnitShift;

/** What stands elsewhere in one run than in another, in mm and kg. */
record ShiftTable(Typeface typeface, Compared first, Compared other) {
    /** Width of all columns but the first (mm). */
    private static final double SHIFTS = 3 * 46 + 26 + 18;

    void onto(Flow flow) {
        flow.heading(
                "What stands elsewhere in " + other.name() + " than in " + first.name() + " (on station, mm and kg)");
        List<UnitShift> shifts = UnitShift.between(first.scene(), other.scene());
        if (shifts.isEmpty()) {
            flow.paragraph("Nothing.");
            return;
        }
        Columns columns = new Columns(
                typeface,
                List.of(
                        new Column("Unit", "", flow.right() - flow.left() - SHIFTS, false),
                        new Column(first.name(), "x, y, z", 46, true),
                        new Column(other.name(), "x, y, z", 46, true),
                        new Column("moved by", "x, y, z", 46, true),
                        new Column("", "", 26, false),
                        new Column("mass", "kg", 18, true)));
        columns.head(flow);
        for (UnitShift shift : shifts) {
            columns.row(
                    flow,
                    List.of(
                            shift.name(),
                            place(shift.first()),
                            place(shift.second()),
                            moved(shift),
                            shift.turned() ? "turned" : "",
                            mass(shift)),
                    false);
        }
    }

    private static String place(@Nullable Point point) {
        return point == null
                ? "not there"
                : Numerals.mm(point.x()) + ", " + Numerals.mm(point.y()) + ", " + Numerals.mm(point.z());
    }

    private static String moved(UnitShift shift) {
        Point first = shift.first();
        Point second = shift.second();
        return first == null || second == null ? "" : place(second.minus(first));
    }

    private static String mass(UnitShift shift) {
        Double mass = shift.massKg();
        return mass == null || mass == 0 ? "" : ComparisonPages.signed(mass);
    }
}
