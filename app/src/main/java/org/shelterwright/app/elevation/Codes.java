package org.shelterwright.app.elevation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The codes of places and pieces, as labels and lists show them: the unit by its number in the brief, the place by its letters, and
 * the piece by its number in the inventory, such as "U03-B" and "P017". Codes stay while the brief keeps its order.
 */
public final class Codes {
    private static final int LETTERS = 26;

    private final Map<String, Integer> units = new LinkedHashMap<>();
    private final Map<String, Integer> pieces = new LinkedHashMap<>();
    private final Scene scene;

    public Codes(Scene scene) {
        this.scene = scene;
        scene.brief().units().forEach(unit -> units.put(unit.id(), units.size() + 1));
        scene.brief().listed().pieces().forEach(piece -> pieces.put(piece.id(), pieces.size() + 1));
    }

    /** Code of a piece, such as "P017". */
    public String piece(String id) {
        return String.format(Locale.ROOT, "P%03d", pieces.getOrDefault(id, 0));
    }

    /** Code of a bay or stowage place of a unit, such as "U03-B". */
    public String place(String unit, String place) {
        PlacedUnit placed = scene.unit(unit).orElse(null);
        List<String> names = new ArrayList<>();
        if (placed != null) {
            placed.item().bays().forEach(bay -> names.add(bay.name()));
            placed.item().stowages().forEach(stowage -> names.add(stowage.name()));
        }
        int number = Math.max(0, names.indexOf(place));
        return String.format(Locale.ROOT, "U%02d-%s", units.getOrDefault(unit, 0), letters(number));
    }

    /** Letters by number from 0: A to Z, then AA, AB and on, so that no two places of a unit share any. */
    static String letters(int number) {
        String last = String.valueOf((char) ('A' + number % LETTERS));
        return number < LETTERS ? last : letters(number / LETTERS - 1) + last;
    }

    /** Code of a piece in a rack with its lowest unit, or of its stowage place. */
    public String where(Held held) {
        String place = place(held.place().unit(), held.place().place());
        return held instanceof InRack in ? place + " U" + in.lowest() : place;
    }
}
