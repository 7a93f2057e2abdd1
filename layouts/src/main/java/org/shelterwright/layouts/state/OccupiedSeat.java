package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.brief.Occupant;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * A person inside the body at their seat. At a seat, they sit in its middle and press on the floor through it; at any other
 * unit, in the middle of its seat zone, and press on the floor under it. The mass acts at the set height above the floor.
 *
 * @param at where the mass acts, in the frame of the body
 * @param stand the floor that the person presses on; {@code null} if through the unit
 * @param missing what is not known, and where to give it; {@code null} if all is known
 */
public record OccupiedSeat(
        PlacedUnit unit,
        Situation situation,
        double massKg,
        Point at,
        @Nullable Rect stand,
        @Nullable String missing) {

    /** The people of a brief whose units are placed, in the order of the brief. */
    public static List<OccupiedSeat> of(Scene scene) {
        List<OccupiedSeat> seats = new ArrayList<>();
        Map<Occupant, Integer> before = new HashMap<>();
        for (Occupant occupant : scene.brief().occupants()) {
            int number = before.merge(occupant, 1, Integer::sum) - 1;
            scene.unit(occupant.unit()).ifPresent(unit -> seats.add(seat(scene, unit, occupant.situation(), number)));
        }
        return seats;
    }

    private static OccupiedSeat seat(Scene scene, PlacedUnit unit, Situation situation, int number) {
        List<Rect> places = places(unit, situation);
        double massKg = scene.rules().valueOr(Figure.PERSON_MASS, 0);
        double height = scene.rules().valueOr(Figure.PERSON_HEIGHT, 0) * Lengths.MM;
        String missing = missing(scene, unit, situation, places, number);
        Rect place = missing == null ? places.get(number) : Rect.of(unit.outline(situation));
        Box box = place.at(0, 0);
        Point at = new Point(box.centre().x(), box.centre().y(), (int) Math.round(height));
        boolean stands = missing == null && unit.item().kind() != ItemKind.SEAT;
        return new OccupiedSeat(unit, situation, massKg, at, stands ? place : null, missing);
    }

    private static List<Rect> places(PlacedUnit unit, Situation situation) {
        if (unit.item().kind() == ItemKind.SEAT) {
            boolean held =
                    situation == Situation.ON_STATION || !unit.item().mounting().loose();
            return held ? List.of(Rect.of(unit.outline(situation))) : List.of();
        }
        return unit.zones(situation).stream()
                .filter(zone -> zone.purpose() == Purpose.SEAT)
                .map(PlacedZone::box)
                .map(Rect::of)
                .toList();
    }

    private static @Nullable String missing(
            Scene scene, PlacedUnit unit, Situation situation, List<Rect> places, int number) {
        for (Figure figure : List.of(Figure.PERSON_MASS, Figure.PERSON_HEIGHT)) {
            if (scene.rules().rule(figure).isEmpty()) {
                return "No rule set states " + figure.id() + ", which people inside need. Set it in the brief.";
            }
        }
        if (number < places.size()) {
            return null;
        }
        String need = situation == Situation.ON_THE_ROAD
                ? " to ride on. Name a bolted seat, or give the item a seat zone on the road."
                : " to work at. Give the item a seat zone, or name another unit.";
        return unit.name() + " has no seat for person " + (number + 1) + need;
    }

    /** The person as a load state sets it, aboard or not. */
    public Fill fill() {
        return Fill.occupant(unit.name());
    }
}
