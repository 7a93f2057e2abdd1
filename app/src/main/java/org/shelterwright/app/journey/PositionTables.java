package org.shelterwright.app.journey;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** Where everything stands on a car, with masses and centres, and what its wheels bear. */
final class PositionTables {
    private static final List<Column> POSITIONS = List.of(
            new Column("No.", "", 9, true),
            new Column("What", "", 46, false),
            new Column("From the rear", "mm", 23, true),
            new Column("From the right", "mm", 23, true),
            new Column("Mass", "kg", 18, true),
            new Column("Centre along", "mm", 22, true),
            new Column("across", "mm", 16, true),
            new Column("above floor", "mm", 18, true));
    private static final List<Column> WHEELS = List.of(
            new Column("Bogie or axle", "", 45, false),
            new Column("Left", "kg", 22, true),
            new Column("Right", "kg", 22, true),
            new Column("Together", "kg", 24, true),
            new Column("Each axle", "kg", 24, true),
            new Column("Left to right", "", 38, true));
    private final Typeface typeface;
    private final PlacedLoad load;

    PositionTables(Typeface typeface, PlacedLoad load) {
        this.typeface = typeface;
        this.load = load;
    }

    void onto(Flow flow) {
        positions(flow);
        wheels(flow);
    }

    private void positions(Flow flow) {
        flow.heading("Positions");
        Columns columns = new Columns(typeface, POSITIONS);
        columns.head(flow);
        int number = 1;
        for (PlacedPiece piece : load.pieces()) {
            Point centre = piece.centre();
            columns.row(
                    flow,
                    List.of(
                            Integer.toString(number++),
                            piece.name() + (piece.stand().pinned() ? " (pinned)" : ""),
                            Numerals.mm(piece.box().x0()),
                            Numerals.mm(piece.box().y0()),
                            piece.shape().massKg() == null
                                    ? "?"
                                    : Numerals.of(piece.shape().massKg(), 0),
                            centre == null ? "?" : whole(centre.x()),
                            centre == null ? "?" : whole(centre.y()),
                            centre == null ? "?" : whole(centre.z())),
                    false);
        }
        if (load.massKg() > 0 && load.unknown().isEmpty()) {
            columns.row(
                    flow,
                    List.of(
                            "",
                            "All",
                            "",
                            "",
                            Numerals.of(load.massKg(), 0),
                            whole((int) Math.round(load.momentX() / load.massKg())),
                            whole((int) Math.round(load.momentY() / load.massKg())),
                            whole((int) Math.round(load.momentZ() / load.massKg()))),
                    true);
        }
    }

    private void wheels(Flow flow) {
        Optional<CarStatics> statics = CarStatics.of(load);
        if (statics.isEmpty() || load.unknown().isPresent()) {
            return;
        }
        flow.heading("What the wheels bear, with the empty car");
        Columns columns = new Columns(typeface, WHEELS);
        columns.head(flow);
        for (CarStatics.GroupLoad group : statics.get().groups()) {
            columns.row(
                    flow,
                    List.of(
                            group.group().name(),
                            Numerals.of(group.leftKg(), 0),
                            Numerals.of(group.rightKg(), 0),
                            Numerals.of(group.kg(), 0),
                            Numerals.of(group.axleKg(), 0),
                            Numerals.of(Math.min(999, group.sideRatio()), 2) + " : 1"),
                    false);
        }
        flow.paragraph("Heavier to lighter end: "
                + Numerals.of(Math.min(999, statics.get().ratio()), 2) + " : 1.");
    }

    private static String whole(int micrometres) {
        return Numerals.of(micrometres / 1000.0, 0);
    }
}
