package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.handling.Carried;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.handling.Handlings;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.ways.Passage;
import org.shelterwright.layouts.ways.Passage.Answer;

/** What a step says in words. */
public final class StepWords {
    private StepWords() {}

    /** The way in, move by move, from outside to the place. */
    public static List<String> way(Passage passage) {
        List<String> lines = new ArrayList<>();
        if (!passage.free()) {
            lines.add("No way in was found" + (passage.answer() == Answer.OVERLAPS ? ": it overlaps others." : "."));
            return lines;
        }
        Opening opening = passage.opening();
        if (opening == null) {
            lines.add("It stands outside.");
            return lines;
        }
        List<Stage> stages = passage.stages();
        boolean first = true;
        for (int i = stages.size() - 1; i > 0; i--) {
            Stage from = stages.get(i);
            Stage to = stages.get(i - 1);
            String move = from.lying() != to.lying()
                    ? "stand it up"
                    : from.quarters() != to.quarters()
                            ? "turn by " + degrees(to.quarters() - from.quarters())
                            : move(to.shift().minus(from.shift()));
            String lying = from.lying() ? ", lying on its " + side(passage) : "";
            lines.add(first ? "in through the " + opening.name() + lying + ": " + move : move);
            first = false;
        }
        return lines;
    }

    private static String side(Passage passage) {
        Face side = passage.lyingOn();
        return side == null ? "" : side.name().toLowerCase(Locale.ROOT) + (side.axis() == Axis.Y ? " side" : "");
    }

    /** Where a unit is set and which way it faces, in one sentence. */
    public static String set(BoltDownStep step) {
        String at = Wording.list(step.datums().stream().map(Datum::text).toList());
        Face front = step.unit().pose(Situation.ON_STATION).apply(Face.FRONT);
        return "Set it " + on(step) + at + ", its front " + Wording.direction(front) + ".";
    }

    /** What carries a unit, where that is another one. */
    private static String on(BoltDownStep step) {
        Place place = step.unit().place(Situation.ON_STATION);
        String host = step.host();
        if (host == null) {
            return "";
        }
        return (place.surface() == Surface.UNDER_UNIT ? "under " : "on ") + host + ", ";
    }

    /** Where a piece sits in its rack, by height units from below, such as "U 4-6 Data storage". */
    public static String seated(InRack piece) {
        return "U " + piece.lowest() + (piece.highest() > piece.lowest() ? "-" + piece.highest() : "") + " "
                + piece.name();
    }

    private static String seated(List<InRack> pieces, int most) {
        return pieces.size() > most
                ? "its " + pieces.size() + " pieces by the list of racks to fill"
                : Wording.list(pieces.stream().map(StepWords::seated).toList());
    }

    /** What is done with a unit before it comes in and after it is bolted, beside its cables; empty if nothing is. */
    public static List<String> fittings(BoltDownStep step) {
        return fittings(step, Integer.MAX_VALUE);
    }

    /**
     * The same, with the pieces of a rack only told if there are not too many: the work pack has a list of them.
     *
     * @param most so many pieces are told
     */
    public static List<String> fittings(BoltDownStep step, int most) {
        Carried carried = step.carried();
        List<String> lines = new ArrayList<>();
        if (!carried.filled().isEmpty()) {
            lines.add("On the bench, before it comes in" + minutes(step.minutesBench()) + ": fit "
                    + seated(carried.filled(), most) + ".");
        }
        if (!carried.off().isEmpty()) {
            lines.add("Take off before, put on again at its place: "
                    + Wording.list(carried.off().stream()
                            .map(part -> part.name() + " (" + Amounts.kg(part.massKg()) + ")")
                            .toList())
                    + ".");
        }
        if (!carried.later().isEmpty()) {
            lines.add("Once it is bolted: fit " + seated(carried.later(), most)
                    + ". With the pieces it would be too heavy to bring in.");
        }
        if (carried.stowed() > 0) {
            lines.add("Empty: what is stowed in it comes in when all is bolted, by the stowage list.");
        }
        return lines;
    }

    private static String minutes(double minutes) {
        return minutes > 0 ? ", about " + Math.round(minutes) + " min" : "";
    }

    /** How the holes of a step are counted; empty if none is. */
    public static String counting(BoltDownStep step) {
        Set<String> texts = new LinkedHashSet<>();
        for (Bolting bolting : step.boltings()) {
            for (Bolting.Place place : bolting.places()) {
                HoleGrid grid = place.grid();
                if (grid != null) {
                    texts.add(counted("holes", grid.along(), grid.first(), grid.pitch())
                            + (grid.rows() > 1
                                    ? ", " + counted("rows", grid.across(), grid.first(), grid.rowPitch())
                                    : ""));
                }
            }
        }
        return texts.isEmpty() ? "" : "Count " + String.join("; ", texts) + ".";
    }

    private static String counted(String what, Axis axis, Point first, int pitch) {
        String from = axis == Axis.X ? "from the rear" : axis == Axis.Y ? "from the right" : "from below";
        return what + " " + from + " (the first at " + Lengths.format(first.along(axis)) + ", then every "
                + Lengths.format(pitch) + ")";
    }

    private static String degrees(int quarters) {
        int turned = Math.floorMod(quarters, 4) * 90;
        return turned == 180 ? "180°" : turned == 90 ? "90° to the left" : "90° to the right";
    }

    private static String move(Point way) {
        Face towards = way.x() != 0
                ? way.x() > 0 ? Face.FRONT : Face.REAR
                : way.y() != 0 ? way.y() > 0 ? Face.LEFT : Face.RIGHT : way.z() > 0 ? Face.TOP : Face.BOTTOM;
        int length = Math.abs(way.x() + way.y() + way.z());
        return Lengths.rounded(length, 0) + " mm " + Wording.direction(towards);
    }

    static List<String> cautions(PlacedUnit unit, Passage passage, Handling handling, boolean powered) {
        List<String> cautions = new ArrayList<>();
        if (handling.means() == Handling.Means.TROLLEY) {
            cautions.add("Crushing: nobody between the unit and a wall; blocks under it before hands go under it.");
        }
        if (handling.means() == Handling.Means.HOIST) {
            cautions.add(
                    "Hanging load: nobody under it. Sling and hoist as their marks allow, by a person trained for it.");
        }
        if (handling.means() == Handling.Means.BY_HAND && handling.people() > 1) {
            cautions.add("Lift together on one person's word; way clear and lit before you lift.");
        }
        Surface surface = unit.place(Situation.ON_STATION).surface();
        if (surface == Surface.WALL || surface == Surface.ROOF || surface == Surface.UNDER_UNIT) {
            cautions.add("Hold or prop it until two fixings are in.");
        }
        if (Handlings.fromPlatform(unit)) {
            cautions.add("From a step platform, not from a ladder.");
        }
        if (unit.item().kind() == ItemKind.BATTERY_BOX) {
            cautions.add("Batteries are live: caps on the terminals, insulated tools, no rings or watches.");
        }
        if (powered) {
            cautions.add("Electrical work dead, locked off and proved dead, by qualified people.");
        }
        if (passage.lyingOn() != null) {
            cautions.add(
                    "It comes in lying and is stood up: tied to the trolley until then, nobody where it may fall.");
        }
        if (passage.turns()) {
            cautions.add("It must be turned on the way: keep the turning circle clear.");
        }
        return cautions;
    }

    static boolean powered(PlacedUnit unit) {
        return unit.item().power() != null
                || unit.item().ports().stream()
                        .map(Port::cableClass)
                        .anyMatch(one -> one.name().toLowerCase(Locale.ROOT).startsWith("power"));
    }

    /** Where the fixings go, by their order of tightening; the name of what takes them is said where it changes. */
    public static String holes(List<Bolting> boltings) {
        List<Bolting.Place> places = boltings.stream()
                .flatMap(one -> one.places().stream())
                .sorted(Comparator.comparingInt(Bolting.Place::number))
                .toList();
        StringBuilder text = new StringBuilder();
        String last = "";
        for (Bolting.Place place : places) {
            boolean same = place.taker().equals(last) && !place.where().isEmpty();
            text.append(text.isEmpty() ? "" : ";  ").append(place.number()).append(": ");
            text.append(same ? place.where() : place.into());
            last = place.taker();
        }
        return text.toString();
    }

    /** How a unit is moved, in one line. */
    public static String handling(Handling handling) {
        String people = handling.people() == 1 ? "one person" : handling.people() + " people";
        return switch (handling.means()) {
            case BY_HAND -> "By hand, " + people + ": they may lift " + Amounts.kg(handling.limitKg()) + " here";
            case TROLLEY ->
                "Floor trolley, " + people + "; it takes " + Amounts.kg(handling.limitKg())
                        + ". Not by hand: one person may lift " + Amounts.kg(handling.onePersonKg());
            case HOIST ->
                "Hoist or lifting table for " + Amounts.kg(handling.limitKg()) + ", " + people
                        + ". Not by hand: one person may lift " + Amounts.kg(handling.onePersonKg());
        };
    }
}
