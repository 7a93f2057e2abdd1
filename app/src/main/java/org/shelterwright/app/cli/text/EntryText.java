package org.shelterwright.app.cli.text;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** What a catalog entry says, for people. Lengths are millimetres. */
public final class EntryText {
    private EntryText() {}

    public static List<String> of(Item item) {
        Facts facts = new Facts()
                .title(item.id() + ": " + item.name())
                .add("kind", CatalogLine.word(item.kind()))
                .add("size", size(item.size()) + "  (depth x width x height)")
                .add("mass", mass(item.mass()))
                .add(
                        "mounted on",
                        words(item.mounting().surfaces()) + (item.mounting().loose() ? ", loose" : ""))
                .add(
                        "turns",
                        item.turns().stream()
                                        .sorted()
                                        .map(turn -> turn.degrees() + "")
                                        .collect(Collectors.joining(", "))
                                + " degrees");
        facts.each("solids", item.solids(), solid -> solid.name() + " " + box(solid.box()));
        facts.each("clear zones", item.zones(), EntryText::zone);
        facts.each("movable parts", item.movableParts(), EntryText::part);
        facts.each("fixings", item.fixings(), EntryText::fixing);
        facts.each("tanks", item.tanks(), EntryText::tank);
        facts.each("bays", item.bays(), bay -> bay.name() + ", " + bay.units() + " U");
        facts.each(
                "stowage places",
                item.stowages(),
                place -> place.name() + ", " + Shown.figure(place.ratingKg()) + " kg " + box(place.inside()));
        facts.each(
                "ports",
                item.ports(),
                port -> port.name() + ", " + CatalogLine.word(port.cableClass()) + ", " + port.connector());
        Power power = item.power();
        facts.add("power", power == null ? null : Shown.figure(power.ratedW()) + " W from " + power.supply());
        Double stackingKg = item.stackingKg();
        facts.add("bears on top", stackingKg == null ? null : Shown.figure(stackingKg) + " kg");
        return facts.add("note", item.note()).lines();
    }

    public static List<String> of(Body body) {
        Facts facts = new Facts()
                .title(body.id() + ": " + body.name())
                .add("kind", "body")
                .add("inside", size(body.inside()) + "  (length x width x height)")
                .add("outside", box(body.outside()))
                .add("tare", mass(body.tare()))
                .add("gross rating", kg(body.grossRatingKg()));
        facts.each("intrusions", body.intrusions(), intrusion -> intrusion.name() + " " + box(intrusion.box()));
        facts.each("openings", body.openings(), EntryText::opening);
        facts.each("hard points", body.hardPoints(), EntryText::hardPoint);
        facts.each("floor zones", body.floorZones(), zone -> zone.name());
        facts.each("entry panels", body.entryPanels(), panel -> panel.name());
        return facts.add("note", body.note()).lines();
    }

    public static List<String> of(Carrier carrier) {
        Facts facts = new Facts()
                .title(carrier.id() + ": " + carrier.name())
                .add("kind", CatalogLine.word(carrier.kind()))
                .add("length, width", Lengths.format(carrier.length()) + " x " + Lengths.format(carrier.width()))
                .add("gross rating", kg(carrier.grossRatingKg()))
                .add("with trailer", kg(carrier.combinationRatingKg()));
        facts.each("axles", carrier.axles(), EntryText::axle);
        facts.each("tanks", carrier.tanks(), EntryText::tank);
        facts.each("seats", carrier.seats(), seat -> seat.name());
        return facts.add("note", carrier.note()).lines();
    }

    /** What the entry of a piece says. */
    public static List<String> of(Piece piece) {
        Facts facts = new Facts()
                .title(piece.id() + ": " + piece.name())
                .add("kind", piece.mount().isPresent() ? "piece, rack-mounted" : "piece, loose")
                .add("size", size(piece.size()) + "  (depth x width x height)")
                .add("mass", mass(piece.mass()));
        piece.mount().ifPresent(rack -> {
            facts.add("height units", rack.units() + " U");
            Integer travel = rack.slideTravel();
            facts.add("slides out", travel == null ? null : Lengths.format(travel) + " mm");
        });
        piece.stowed().ifPresent(loose -> {
            facts.add("at hand", CatalogLine.word(loose.urgency()));
            facts.add("stowed", loose.upright() ? loose.fragile() ? "upright, fragile" : "upright" : loose.fragile() ? "fragile" : null);
            var goods = loose.goods();
            facts.add("dangerous goods", goods == null ? null : "class " + goods.hazardClass());
        });
        Power power = piece.power();
        facts.add("power", power == null ? null : Shown.figure(power.ratedW()) + " W from " + power.supply());
        return facts.add("note", piece.note()).lines();
    }

    static String size(@Nullable Size size) {
        return size == null
                ? "-"
                : Lengths.format(size.x()) + " x " + Lengths.format(size.y()) + " x " + Lengths.format(size.z());
    }

    private static String mass(MassData mass) {
        if (mass.massKg() == null) {
            return "not known";
        }
        Point centre = mass.centre();
        return kg(mass.massKg()) + " (" + CatalogLine.word(mass.basis()) + "), centre "
                + (centre == null ? "not known" : "at " + point(centre.x(), centre.y(), centre.z()));
    }

    private static String zone(ClearZone zone) {
        return zone.name() + " (" + CatalogLine.word(zone.purpose()) + ") " + box(zone.box());
    }

    private static String part(MovablePart part) {
        return part.name() + " (" + CatalogLine.word(part.kind()) + ") sweeps " + box(part.sweep());
    }

    private static String fixing(Fixing fixing) {
        String grade = fixing.grade();
        return fixing.name() + " " + fixing.thread() + (grade == null ? "" : "-" + grade) + " through the "
                + CatalogLine.word(fixing.face()) + " at "
                + point(fixing.at().x(), fixing.at().y(), fixing.at().z());
    }

    private static String tank(Tank tank) {
        return tank.name() + ", " + Shown.figure(tank.leastKg()) + " to " + Shown.figure(tank.fullKg()) + " kg";
    }

    private static String opening(Opening opening) {
        return opening.name() + " (" + CatalogLine.word(opening.kind()) + (opening.exit() ? ", way out" : "")
                + ") in the " + CatalogLine.word(opening.wall()) + " wall, " + box(opening.area());
    }

    private static String hardPoint(HardPoint point) {
        return point.name() + " on the " + CatalogLine.word(point.surface()) + ", "
                + (point.threads().isEmpty() ? "any thread" : String.join(", ", point.threads()));
    }

    private static String axle(Axle axle) {
        return axle.name() + " at " + Lengths.format(axle.x()) + ", tare " + kg(axle.tareKg()) + ", rating "
                + kg(axle.ratingKg());
    }

    private static String kg(@Nullable Double massKg) {
        return massKg == null ? "not known" : Shown.figure(massKg) + " kg";
    }

    private static String words(Collection<? extends Enum<?>> constants) {
        return constants.stream().map(CatalogLine::word).sorted().collect(Collectors.joining(", "));
    }

    private static String box(Box box) {
        return "from " + point(box.x0(), box.y0(), box.z0()) + " to " + point(box.x1(), box.y1(), box.z1());
    }

    private static String point(int x, int y, int z) {
        return "(" + Lengths.format(x) + ", " + Lengths.format(y) + ", " + Lengths.format(z) + ")";
    }
}
