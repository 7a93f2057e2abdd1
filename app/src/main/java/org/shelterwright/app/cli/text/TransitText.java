package org.shelterwright.app.cli.text;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.TransitCar;

/** What entries for planning legs say, for people. Lengths are millimetres. */
public final class TransitText {
    private TransitText() {}

    public static List<String> of(TransitCar car) {
        Facts facts = new Facts()
                .title(car.id() + ": " + car.name())
                .add("kind", CatalogLine.word(car.kind()))
                .add("class", car.letters())
                .add(
                        "floor",
                        mm(car.deck().length()) + " x " + mm(car.deck().width()) + " of "
                                + car.deck().material().word())
                .add(
                        "clear height",
                        car.deck().clearHeight() == null
                                ? "open"
                                : mm(car.deck().clearHeight()))
                .add("floor height", heights(car))
                .add("tare", kg(car.tareKg()))
                .add("gross rating", kg(car.grossRatingKg()))
                .add("payload", kg(car.payloadKg()));
        facts.each(
                "wheels",
                car.wheels(),
                group -> group.name() + " at " + mm(group.x()) + ", " + group.axles()
                        + (group.axles() == 1 ? " axle" : " axles"));
        facts.each("load limits", car.loadLimits(), one -> one.category() + " " + kg(one.loadKg()));
        facts.each(
                "doorways", car.doorways(), door -> door.name() + " " + mm(door.width()) + " x " + mm(door.height()));
        facts.each(
                "anchor rows",
                car.anchorRows(),
                row -> row.name() + ", " + row.count() + " points, "
                        + (row.ratingN() == null
                                ? "rating not known"
                                : Shown.figure(row.ratingN() / 1000) + " kN each"));
        return facts.add("source", car.source().text()).add("note", car.note()).lines();
    }

    public static List<String> of(Outline outline) {
        Facts facts = new Facts().title(outline.id() + ": " + outline.name());
        facts.each(
                "corners", outline.steps(), step -> "half width " + mm(step.halfWidth()) + " at " + mm(step.height()));
        return facts.add("source", outline.source().text())
                .add("note", outline.note())
                .lines();
    }

    public static List<String> of(LashingKind lashing) {
        return new Facts()
                .title(lashing.id() + ": " + lashing.name())
                .add("make", CatalogLine.word(lashing.make()) + ", " + CatalogLine.word(lashing.tensioner()))
                .add("capacity", Shown.figure(lashing.capacityN() / 1000) + " kN")
                .add("tension", lashing.tensionN() == null ? null : Shown.figure(lashing.tensionN() / 1000) + " kN")
                .add("length", mm(lashing.shortest()) + " to " + mm(lashing.longest()))
                .add("source", lashing.source().text())
                .add("note", lashing.note())
                .lines();
    }

    private static @Nullable String heights(TransitCar car) {
        Integer low = car.deck().lowest();
        Integer high = car.deck().highest();
        return low == null || high == null ? null : mm(low) + " laden and worn to " + mm(high) + " empty and new";
    }

    private static String mm(int micrometres) {
        return Lengths.format(micrometres);
    }

    private static @Nullable String kg(@Nullable Double massKg) {
        return massKg == null ? null : Shown.figure(massKg) + " kg";
    }
}
