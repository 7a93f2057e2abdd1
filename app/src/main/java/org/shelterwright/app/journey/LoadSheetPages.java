package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.report.RowBlock;
import org.shelterwright.app.report.RowGroup;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.ledger.transport.place.OutlineFit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** The load sheet of one car on one leg: drawing, positions, wheels, lashings, cautions, limits. */
final class LoadSheetPages {
    private final Typeface typeface;
    private final JourneyIssue issue;
    private final LegScene leg;
    private final PlacedLoad load;
    private final Flow flow;

    LoadSheetPages(Typeface typeface, JourneyIssue issue, LegScene leg, PlacedLoad load) {
        this.typeface = typeface;
        this.issue = issue;
        this.leg = leg;
        this.load = load;
        this.flow = new Flow(
                typeface,
                SheetSize.A4,
                issue.name() + ", load sheet",
                load.name() + " on " + leg.state(),
                issue.foot());
    }

    List<Drawing> pages() {
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        facts();
        open();
        sketch();
        new PositionTables(typeface, load).onto(flow);
        outline();
        new LashingTables(typeface, issue, leg, load).onto(flow);
        cautions();
        limits();
        return flow.pages();
    }

    private void facts() {
        Leg asked = leg.leg();
        flow.heading("Leg and car");
        flow.pair(
                "Leg",
                asked.name() + ", " + asked.from() + " to " + asked.to()
                        + (asked.distanceKm() == null
                                ? ""
                                : ", " + Numerals.of(asked.distanceKm(), 0) + " km by "
                                        + asked.mode().word()));
        String letters = load.car().letters();
        flow.pair(
                "Car",
                load.car().name() + (letters == null ? "" : ", class " + letters) + " ("
                        + load.car().id() + ")");
        flow.pair(
                "Load",
                Numerals.of(load.massKg(), 0) + " kg, "
                        + Wording.count(load.pieces().size(), "piece")
                        + "; empty car "
                        + Numerals.of(load.car().tareKg(), 0) + " kg");
        leg.outline().ifPresent(outline -> flow.pair("Outline", outline.name() + curve(asked)));
        leg.lineCategory()
                .ifPresent(line -> flow.pair(
                        "Line category",
                        line.name() + ": " + Numerals.of(line.axleKg(), 0) + " kg an axle, "
                                + Numerals.of(line.perMetreKg(), 0) + " kg a metre"));
        flow.pair(
                "Held against",
                leg.rules().loadCases().isEmpty()
                        ? "no load case is set"
                        : String.join(
                                "; ",
                                leg.rules().loadCases().stream()
                                        .map(LoadSheetPages::words)
                                        .toList()));
        if (load.load().handBrake() != null && load.load().gear() != null) {
            flow.pair(
                    "Hand brakes and gears",
                    "hand brakes " + load.load().handBrake().word() + ", gears "
                            + load.load().gear().word());
        }
        if (asked.note() != null) {
            flow.pair("Note", asked.note());
        }
    }

    private static String curve(Leg asked) {
        return asked.curveM() == null ? "" : ", least curve " + Numerals.of(asked.curveM(), 0) + " m";
    }

    private static String words(LoadCase one) {
        return one.name() + " (forward " + Numerals.short3(one.forwardG()) + " g, rearward "
                + Numerals.short3(one.rearwardG()) + " g, sideways " + Numerals.short3(one.sidewaysG()) + " g)";
    }

    private void sketch() {
        double width = flow.right() - flow.left();
        double height = LongView.height(load, width);
        flow.need(height + 14);
        flow.heading("Drawing");
        flow.add(
                height,
                top -> LongView.shapes(typeface, leg, load, new Bounds(flow.left(), top, flow.right(), top + height)));
    }

    private void outline() {
        Outline outline = leg.outline().orElse(null);
        Integer low = load.car().deck().lowest();
        Integer high = load.car().deck().highest();
        if (outline == null || low == null || high == null || load.car().deck().clearHeight() != null) {
            return;
        }
        PlacedPiece tight = null;
        OutlineFit fit = null;
        for (PlacedPiece piece : load.pieces()) {
            OutlineFit own = OutlineFit.of(leg, load.car(), piece, low, high).orElse(null);
            if (own != null && (fit == null || own.clearance() < fit.clearance())) {
                tight = piece;
                fit = own;
            }
        }
        if (tight == null || fit == null) {
            return;
        }
        PlacedPiece piece = tight;
        OutlineFit at = fit;
        double height = 82;
        flow.need(height + 24);
        flow.heading("End view at the tightest section, " + piece.name());
        flow.paragraph("At " + Numerals.mm(at.at()) + " mm from the rear end of the floor"
                + (at.throwUm() == 0
                        ? "."
                        : "; a curve of "
                                + Numerals.of(Objects.requireNonNull(leg.leg().curveM()), 0) + " m throws it by "
                                + Numerals.of(at.throwUm() / 1000.0, 0) + " mm to either side.")
                + " Clearance " + Numerals.of(at.clearance() / 1000.0, 0) + " mm.");
        flow.add(
                height,
                top -> EndView.shapes(
                        load, piece, outline, at, new Bounds(flow.left(), top + 1, flow.right(), top + height), true));
    }

    private void limits() {
        flow.heading("Limits of this load");
        Function<List<String>, String> names = units -> units.size() > 3 ? load.name() : issue.names(units);
        RowBlock block = new RowBlock(typeface, names);
        block.head(flow);
        double close = leg.rules().valueOr(Figure.CLOSE_SHARE, 0.9);
        RowGroup.of(rows()).forEach(group -> block.add(flow, group, "", close));
    }

    private List<Row> rows() {
        LegLedger ledger = issue.ledger().legs().get(leg.number() - 1);
        return Shortened.of(ledger.ledger().rows().stream()
                .filter(row -> row.units().contains(load.id()))
                .toList());
    }

    /** The verdict first: what would hinder this load is read before it is put on. */
    private void open() {
        rows().stream()
                .filter(row -> row.verdict() != Verdict.MET)
                .forEach(row -> flow.pair("Limit, " + row.verdict().word(), JourneyIssue.sentences(row, leg.leg())));
    }

    private void cautions() {
        flow.heading("Cautions");
        List<String> cautions = new ArrayList<>(List.of(
                "Only people trained for it load and lash. Nobody stands between vehicles, or between a load and what it moves"
                        + " toward, while anything moves. Stay off the car under overhead lines.",
                "Masses and centres are calculated; weigh before the first journey. Check tyre pressures: soft tyres slacken"
                        + " lashings."));
        if (load.load().lashings().stream().anyMatch(lashing -> lashing.direct())) {
            cautions.add(
                    "Tighten by hand evenly on both sides, then one more half turn. Over-tightening tears eyes out. Wire"
                            + " hooks and lock turnbuckles; load binders do not take the place of turnbuckles.");
        }
        if (leg.leg().mode() == Mode.RAIL) {
            cautions.add(
                    "Keep the brake wheel, couplings and side doors free. Drop sides and ends are latched. Look at all"
                            + " lashings again after the first hour and at each stop that allows it.");
            cautions.add("The railway accepts the load and its outline; a wagon on another route needs a new check.");
        }
        if (leg.leg().mode() == Mode.ROAD) {
            cautions.add("Look at all lashings again after a few kilometres and at each stop.");
        }
        cautions.add("Doors, covers, masts, supports and other movable parts are secured and listed before departure.");
        cautions.forEach(flow::paragraph);
    }
}
