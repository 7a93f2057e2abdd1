package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** What is on each car, and in which order it comes off. */
final class PackingPages {
    private static final List<Column> LIST = List.of(
            new Column("No.", "", 11, true),
            new Column("What", "", 56, false),
            new Column("Length × width × height", "mm", 42, true),
            new Column("Mass", "kg", 18, true),
            new Column("To", "", 34, false),
            new Column("Seen", "", 14, false));

    private final Typeface typeface;
    private final JourneyIssue issue;
    private final Flow flow;

    PackingPages(Typeface typeface, JourneyIssue issue) {
        this.typeface = typeface;
        this.issue = issue;
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", packing lists",
                "journey " + issue.journey().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        List<String> told = new ArrayList<>();
        for (LegScene leg : issue.scene().legs()) {
            for (PlacedLoad load : leg.loads()) {
                if (!told.contains(load.id())) {
                    told.add(load.id());
                    load(leg, load);
                }
            }
        }
        if (told.isEmpty()) {
            flow.paragraph("Everything goes on its own wheels.");
        }
        return flow.pages();
    }

    private void load(LegScene leg, PlacedLoad load) {
        flow.heading(load.name() + ", " + load.car().name());
        flow.paragraph(legs(load) + ". " + load.pieces().size() + " pieces, " + Numerals.of(load.massKg(), 0) + " kg"
                + (load.uncertaintyKg() > 0 ? " ± " + Numerals.of(load.uncertaintyKg(), 0) + " kg" : "") + ".");
        Columns columns = new Columns(typeface, LIST);
        columns.head(flow);
        int number = 1;
        for (PlacedPiece piece : load.pieces()) {
            Size size = piece.shape().size();
            columns.row(
                    flow,
                    List.of(
                            Integer.toString(number++),
                            piece.name(),
                            Numerals.mm(size.x()) + " × " + Numerals.mm(size.y()) + " × " + Numerals.mm(size.z()),
                            piece.shape().massKg() == null
                                    ? "?"
                                    : Numerals.of(piece.shape().massKg(), 0),
                            destination(leg, piece),
                            ""),
                    false);
        }
        flow.gap(2);
        List<String> order = new ArrayList<>();
        for (PlacedPiece piece : unloading(load)) {
            order.add(piece.name());
        }
        if (order.size() > 1) {
            flow.paragraph("Unloading order: " + String.join("; ", order) + ". " + why(load));
        }
        if (load.pieces().stream().anyMatch(piece -> !piece.lengthways())) {
            flow.paragraph("Turned a quarter on the car: "
                    + String.join(
                            ", ",
                            load.pieces().stream()
                                    .filter(piece -> !piece.lengthways())
                                    .map(PlacedPiece::name)
                                    .toList())
                    + ".");
        }
    }

    private static String why(PlacedLoad load) {
        return load.car().deck().clearHeight() == null
                ? "Vehicles drive off forward over the front end, the foremost first; crates are taken off by fork or crane as they"
                        + " come free. Loading is the reverse."
                : "From the door inward and from the top down. Loading is the reverse.";
    }

    /** From an open deck the foremost first; from between walls from the rear door inward, the upper ones first. */
    static List<PlacedPiece> unloading(PlacedLoad load) {
        boolean open = load.car().deck().clearHeight() == null;
        Comparator<PlacedPiece> along = open
                ? Comparator.comparingInt(piece -> -piece.box().x1())
                : Comparator.comparingInt(piece -> piece.box().x0());
        return load.pieces().stream()
                .sorted(along.thenComparingInt(piece -> -piece.box().z1()).thenComparing(PlacedPiece::id))
                .toList();
    }

    private String legs(PlacedLoad load) {
        List<String> names = new ArrayList<>();
        for (LegScene leg : issue.scene().legs()) {
            if (leg.loads().contains(load)) {
                names.add("leg " + leg.number() + ", " + leg.leg().from() + " to "
                        + leg.leg().to());
            }
        }
        return "Goes on " + String.join("; ", names);
    }

    private String destination(LegScene leg, PlacedPiece piece) {
        String to = issue.journey().piece(piece.id()).map(Piece::destination).orElse(null);
        List<LegScene> legs = issue.scene().legs();
        return to == null
                ? legs.isEmpty()
                        ? leg.leg().to()
                        : legs.get(legs.size() - 1).leg().to()
                : to;
    }
}
