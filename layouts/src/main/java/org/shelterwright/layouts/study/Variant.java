package org.shelterwright.layouts.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.edit.DuplicateUnits;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.RemoveUnit;
import org.shelterwright.layouts.edit.SwapItem;
import org.shelterwright.layouts.file.BriefCheck;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.rules.RuleSet;

/**
 * A brief with settings applied, and everything still to be placed: body, carrier, crew, rules and limits first, then units of
 * other items, then quantities, then items that come otherwise.
 */
final class Variant {
    private Variant() {}

    /**
     * Makes the start of a run.
     *
     * @throws IllegalArgumentException with a sentence if a setting makes no sense for the brief
     */
    static Layout of(Brief base, Collection<Setting> settings, Catalog catalog) {
        Brief brief = base;
        for (Setting setting : settings) {
            brief = framed(brief, setting);
        }
        Parts parts = Parts.of(brief, catalog);
        brief = housed(brief, parts.body());
        Layout layout = Layout.empty(brief, parts).withContents(Contents.of(brief, catalog));
        for (Setting setting : settings) {
            for (Setting.Swap swap : setting.swaps()) {
                Item item = catalog.item(swap.item())
                        .orElseThrow(() -> new IllegalArgumentException(
                                "The item \"" + swap.item() + "\" is not in the catalog."));
                layout = new SwapItem(swap.unit(), item).apply(layout);
            }
        }
        for (Setting setting : settings) {
            for (Setting.Quantity quantity : setting.quantities()) {
                layout = counted(layout, quantity);
            }
        }
        return changed(layout, settings);
    }

    /** Why a start cannot be laid out at all, such as a unit that is larger than the body; empty if it can. */
    static Optional<String> refusal(Layout start, List<RuleSet> ruleSets) {
        Parts parts = start.parts();
        List<Carrier> carriers = new ArrayList<>();
        start.carrier().ifPresent(carriers::add);
        var trailer = parts.trailer();
        if (trailer != null && carriers.stream().noneMatch(one -> one.id().equals(trailer.id()))) {
            carriers.add(trailer);
        }
        Catalog own = Catalog.of(
                parts.items().values(),
                List.of(parts.body()),
                carriers,
                parts.cables().values(),
                start.contents().kinds().values(),
                Transit.NONE);
        List<Problem> problems = BriefCheck.of(start.brief(), LayoutFiles.unknownPlaces(start.brief()), own, ruleSets)
                .problems();
        return problems.stream().findFirst().map(Problem::sentence);
    }

    private static Brief framed(Brief brief, Setting setting) {
        Brief framed = brief;
        String body = setting.body();
        if (body != null) {
            framed = framed.withBody(body);
        }
        String carrier = setting.carrier();
        if (carrier != null) {
            framed = framed.withCarrier(carrier);
        }
        Integer crew = setting.crew();
        if (crew != null) {
            framed = framed.withCrew(crew);
        }
        if (!setting.ruleSets().isEmpty()) {
            framed = framed.withRuleSets(setting.ruleSets());
        }
        if (!setting.limits().isEmpty()) {
            Map<String, Double> limits = new TreeMap<>(framed.limits());
            limits.putAll(setting.limits());
            framed = framed.withLimits(limits);
        }
        return framed;
    }

    /** Tasks done outside by an opening that the body does not have are done at no place that is stated. */
    private static Brief housed(Brief brief, Body body) {
        Inventory listed = brief.inventory();
        return listed == null
                ? brief
                : brief.withInventory(listed.withoutPlaces(task -> task.opening() != null
                        && body.openings().stream().noneMatch(one -> one.name().equals(task.opening()))));
    }

    private static Layout counted(Layout layout, Setting.Quantity quantity) {
        if (quantity.count() == 0) {
            return new RemoveUnit(quantity.unit()).apply(layout);
        }
        Layout counted = layout;
        Edit copy = new DuplicateUnits(List.of(quantity.unit()), Point.ORIGIN);
        for (int i = 1; i < quantity.count(); i++) {
            counted = copy.apply(counted);
        }
        return counted;
    }

    private static Layout changed(Layout layout, Collection<Setting> settings) {
        Map<String, Item> items = new LinkedHashMap<>(layout.parts().items());
        for (Setting setting : settings) {
            for (ItemChange change : setting.items()) {
                items.computeIfPresent(change.item(), (id, item) -> change.of(item));
            }
        }
        Parts old = layout.parts();
        Parts parts = new Parts(old.body(), old.carrier(), old.trailer(), items, old.cables());
        return Layout.empty(layout.brief(), parts).withContents(layout.contents());
    }
}
