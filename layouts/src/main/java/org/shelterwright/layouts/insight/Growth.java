package org.shelterwright.layouts.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.insight.UnitGrowth.Kind;
import org.shelterwright.layouts.insight.UnitGrowth.Way;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.study.ItemChange;

/**
 * How much each unit may grow in mass and size. Each growth is held against every limit; the greatest that breaks nothing is found
 * by halving, which takes it that what breaks stays broken as a unit grows further. Safe for several threads.
 */
public final class Growth {
    /** Most that is looked at (kg). */
    public static final int MOST_KG = 1023;
    /** Most that is looked at (mm). */
    public static final int MOST_MM = 511;

    private final Checker checker;
    private final Layout layout;
    private final Worsening worsening;

    public Growth(Checker checker, Layout layout) {
        this.checker = checker;
        this.layout = layout;
        this.worsening = new Worsening(checker.check(layout));
    }

    /** The units that are placed, in the order of the brief. */
    public List<UnitSpec> units() {
        return layout.brief().units().stream()
                .filter(unit -> layout.placements().containsKey(unit.id()))
                .toList();
    }

    /** How much a unit may grow. Cost: some forty full checks. */
    public UnitGrowth of(UnitSpec unit) {
        List<Way> ways = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (kind != Kind.HEAVIER || layout.item(unit).mass().massKg() != null) {
                ways.add(way(unit, kind));
            }
        }
        return new UnitGrowth(unit.id(), unit.name(), ways);
    }

    private Way way(UnitSpec unit, Kind kind) {
        int holds = 0;
        int breaks = kind == Kind.HEAVIER ? MOST_KG + 1 : MOST_MM + 1;
        Row broken = null;
        while (breaks - holds > 1) {
            int middle = (holds + breaks) / 2;
            Optional<Row> row = worsening.first(checker.check(grown(unit, kind, middle)));
            if (row.isPresent()) {
                breaks = middle;
                broken = row.get();
            } else {
                holds = middle;
            }
        }
        return new Way(kind, holds, broken);
    }

    private Layout grown(UnitSpec unit, Kind kind, int by) {
        Item item = layout.item(unit);
        Integer length = by * Lengths.MM;
        ItemChange change = new ItemChange(
                item.id(),
                kind == Kind.DEEPER ? length : null,
                kind == Kind.WIDER ? length : null,
                kind == Kind.TALLER ? length : null,
                kind == Kind.HEAVIER ? Double.valueOf(by) : null);
        return Grown.unit(layout, unit.id(), change.of(item).withId(item.id() + "-grown"));
    }
}
