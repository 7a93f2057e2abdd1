package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.arrangement.GeneralArrangement;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.view.CentreMark;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.statement.StateTotal;

/** What drawings and pictures of a layout say besides showing it. */
final class DrawingNotes {

    private DrawingNotes() {}

    static GeneralArrangement.Told of(Issue issue) {
        Optional<Point> centre = centre(issue, Situation.ON_STATION);
        List<String> notes = new ArrayList<>();
        notes.add(
                "Datums are the inside faces of rear wall, right wall and floor. x runs forward, y to the left, z up (axes"
                        + " after ISO 8855). Dimensions lead to the rear right bottom corner of each unit.");
        notes.add(sizes(issue));
        notes.add(
                "Long-dash double-dot lines: clear zones, swings, centroid lines, and what lies before a cut. Dashed lines: units hidden under others. Narrow 45°"
                        + " hatching: cut surfaces. Wide hatching on the floor: clear zones.");
        String unknown = unknownHinges(issue);
        if (!unknown.isEmpty()) {
            notes.add("Hinge side not stated, drawn at the right or rear jamb: " + unknown + ".");
        }
        notes.add(centreNote(issue, centre.orElse(null), Situation.ON_STATION));
        String moved = moved(issue);
        if (!moved.isEmpty()) {
            notes.add("Drawn on station. Elsewhere on the road, as the last sheet shows: " + moved + ".");
        }
        if (!issue.scene().toPlace().isEmpty()) {
            notes.add("Still to place: "
                    + String.join(
                            ", ",
                            issue.scene().toPlace().stream()
                                    .map(unit -> unit.name())
                                    .toList()) + ".");
        }
        notes.add("Ledger of " + issue.particulars().date() + ": " + issue.verdicts() + ".");
        notes.add("Drawn after ISO 128, 129-1, 3098, 5456-2, 5457, 6433, 7200 and 7573; conformity is not claimed.");
        notes.add(Issue.CAUTION);
        return new GeneralArrangement.Told(
                issue.particulars(), centre.orElse(null), notes, road(issue, moved), issue.madeWith());
    }

    private static GeneralArrangement.@Nullable Road road(Issue issue, String moved) {
        if (moved.isEmpty()) {
            return null;
        }
        Point centre = centre(issue, Situation.ON_THE_ROAD).orElse(null);
        return new GeneralArrangement.Road(
                centre,
                List.of(
                        "Drawn on the road. Stowed elsewhere than on station: " + moved + ".",
                        "Datums, lines and references as on sheet 1.",
                        centreNote(issue, centre, Situation.ON_THE_ROAD),
                        Issue.CAUTION));
    }

    private static String unknownHinges(Issue issue) {
        return String.join(
                ", ",
                issue.body().openings().stream()
                        .filter(one ->
                                one.kind() == Opening.Kind.DOOR && one.wall().upright())
                        .filter(one -> one.swing() == null && one.hinge() == null)
                        .map(Opening::name)
                        .toList());
    }

    /** The marks of the centre of mass in pictures; none if it is not known. */
    static List<CentreMark> marks(Issue issue, Situation situation) {
        return centre(issue, situation).map(at -> new CentreMark(at, "centre of mass")).stream()
                .toList();
    }

    /** Nominal centre of mass of the filled body with full tanks; empty if any mass or centre is missing. */
    private static Optional<Point> centre(Issue issue, Situation situation) {
        return issue.masses().filledBody(situation).flatMap(StateTotal::centre);
    }

    private static String sizes(Issue issue) {
        Box outside = issue.body().outside();
        return "Inside "
                + mm(
                        issue.body().inside().x(),
                        issue.body().inside().y(),
                        issue.body().inside().z())
                + "; outside "
                + mm(outside.x1() - outside.x0(), outside.y1() - outside.y0(), outside.z1() - outside.z0()) + " mm.";
    }

    private static String centreNote(Issue issue, @Nullable Point centre, Situation situation) {
        if (centre == null) {
            return "The centre of mass is not shown: figures are missing, see the mass statement.";
        }
        Double mass =
                issue.masses().filledBody(situation).map(StateTotal::massKg).orElse(null);
        return "Quartered ring: nominal centre of mass of the filled body "
                + (situation == Situation.ON_STATION ? "on station" : "on the road") + ", tanks full, at x "
                + Numerals.of(centre.x() / 1000.0, 0) + ", y " + Numerals.of(centre.y() / 1000.0, 0) + ", z "
                + Numerals.of(centre.z() / 1000.0, 0)
                + (mass == null ? "." : "; mass with growth " + Numerals.of(mass, 0) + Numerals.GAP + "kg.");
    }

    private static String moved(Issue issue) {
        return String.join(
                ", ",
                issue.scene().units().stream()
                        .filter(unit -> !unit.place(Situation.ON_STATION).equals(unit.place(Situation.ON_THE_ROAD)))
                        .map(PlacedUnit::name)
                        .toList());
    }

    private static String mm(int x, int y, int z) {
        return Numerals.mm(x) + " × " + Numerals.mm(y) + " × " + Numerals.mm(z);
    }
}
