package org.shelterwright.app.desk.item;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Material;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.QuarterTurn;

/**
 * What is typed of an item. Immutable; {@link ItemReading} says what comes of it.
 *
 * @param base gives what the form does not show: movable parts, supports, ports, power and the like
 * @param texts by figure; empty where nothing is known
 * @param solids parts of what it fills; empty: its whole size
 */
public record ItemDraft(
        Item base,
        Map<Figure, String> texts,
        ItemKind kind,
        Material material,
        MassBasis basis,
        Set<Surface> surfaces,
        boolean loose,
        Set<QuarterTurn> turns,
        List<Line.Filled> solids,
        List<Line.Kept> zones,
        List<Line.Bolt> fixings) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    public ItemDraft {
        texts = Collections.unmodifiableMap(new EnumMap<>(texts));
        surfaces = Set.copyOf(surfaces);
        turns = Set.copyOf(turns);
        solids = List.copyOf(solids);
        zones = List.copyOf(zones);
        fixings = List.copyOf(fixings);
    }

    /** An item as it is. */
    public static ItemDraft of(Item item) {
        Map<Figure, String> texts = new EnumMap<>(Figure.class);
        MassData mass = item.mass();
        var centre = mass.centre();
        texts.put(Figure.NAME, item.name());
        texts.put(Figure.DEPTH, LengthUnit.MILLIMETRE.format(item.size().x()));
        texts.put(Figure.WIDTH, LengthUnit.MILLIMETRE.format(item.size().y()));
        texts.put(Figure.HEIGHT, LengthUnit.MILLIMETRE.format(item.size().z()));
        texts.put(Figure.MASS, number(mass.massKg()));
        texts.put(Figure.CENTRE, centre == null ? "" : Line.corner(centre));
        texts.put(Figure.UNCERTAINTY, number(mass.uncertaintyKg()));
        texts.put(Figure.GROWTH, percent(mass.growthShare()));
        texts.put(Figure.LOWEST, length(item.mounting().lowestAbove()));
        texts.put(Figure.HIGHEST, length(item.mounting().highestAbove()));
        texts.put(Figure.STACKING, number(item.stackingKg()));
        String note = item.note();
        texts.put(Figure.NOTE, note == null ? "" : note);
        boolean whole = item.solids().size() == 1
                && item.solids().get(0).box().equals(item.size().box());
        return new ItemDraft(
                item,
                texts,
                item.kind(),
                item.material(),
                mass.basis(),
                item.mounting().surfaces(),
                item.mounting().loose(),
                item.turns(),
                whole ? List.of() : item.solids().stream().map(Line.Filled::of).toList(),
                item.zones().stream().map(Line.Kept::of).toList(),
                item.fixings().stream().map(Line.Bolt::of).toList());
    }

    public String text(Figure figure) {
        return texts.getOrDefault(figure, "");
    }

    public ItemDraft with(Figure figure, String text) {
        Map<Figure, String> changed = new EnumMap<>(texts);
        changed.put(figure, text.strip());
        return new ItemDraft(base, changed, kind, material, basis, surfaces, loose, turns, solids, zones, fixings);
    }

    public ItemDraft with(ItemKind other) {
        return new ItemDraft(base, texts, other, material, basis, surfaces, loose, turns, solids, zones, fixings);
    }

    public ItemDraft with(Material other) {
        return new ItemDraft(base, texts, kind, other, basis, surfaces, loose, turns, solids, zones, fixings);
    }

    public ItemDraft with(MassBasis other) {
        return new ItemDraft(base, texts, kind, material, other, surfaces, loose, turns, solids, zones, fixings);
    }

    public ItemDraft mounted(Set<Surface> on, boolean loosely) {
        return new ItemDraft(base, texts, kind, material, basis, on, loosely, turns, solids, zones, fixings);
    }

    public ItemDraft turned(Set<QuarterTurn> allowed) {
        return new ItemDraft(base, texts, kind, material, basis, surfaces, loose, allowed, solids, zones, fixings);
    }

    public ItemDraft withSolids(List<Line.Filled> others) {
        return new ItemDraft(base, texts, kind, material, basis, surfaces, loose, turns, others, zones, fixings);
    }

    public ItemDraft withZones(List<Line.Kept> others) {
        return new ItemDraft(base, texts, kind, material, basis, surfaces, loose, turns, solids, others, fixings);
    }

    public ItemDraft withFixings(List<Line.Bolt> others) {
        return new ItemDraft(base, texts, kind, material, basis, surfaces, loose, turns, solids, zones, others);
    }

    /** What of the item the form does not show, in a few words; empty if there is nothing. */
    public List<String> kept() {
        List<String> kept = new ArrayList<>();
        count(kept, base.movableParts().size(), "movable part");
        count(kept, base.supports().size(), "support");
        count(kept, base.ports().size(), "port");
        count(kept, base.stowages().size(), "stowage");
        count(kept, base.tanks().size(), "tank");
        count(kept, base.patches().size(), "contact patch");
        if (base.power() != null) {
            kept.add("what it draws");
        }
        if (base.plant() != null) {
            kept.add("what it provides");
        }
        return kept;
    }

    private static void count(List<String> kept, int count, String what) {
        if (count > 0) {
            kept.add(count + " " + what + (count == 1 ? "" : what.endsWith("h") ? "es" : "s"));
        }
    }

    private static String number(@Nullable Double value) {
        return value == null
                ? ""
                : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static String percent(@Nullable Double share) {
        return share == null
                ? ""
                : BigDecimal.valueOf(share)
                        .multiply(HUNDRED)
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private static String length(@Nullable Integer value) {
        return value == null ? "" : LengthUnit.MILLIMETRE.format(value);
    }
}
