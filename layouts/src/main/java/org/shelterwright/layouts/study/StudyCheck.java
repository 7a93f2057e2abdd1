package org.shelterwright.layouts.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Load;

/** Holds whatever a study names against its brief, the catalog and the rules. */
final class StudyCheck {
    private static final int MOST = 20;

    private final Study study;
    private final Places places;
    private final @Nullable Brief brief;
    private final @Nullable Journey journey;
    private final Catalog catalog;
    private final List<RuleSet> ruleSets;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, String> changedBy = new HashMap<>();

    StudyCheck(Study study, Places places, Brief brief, Catalog catalog, List<RuleSet> ruleSets) {
        this.study = study;
        this.places = places;
        this.brief = brief;
        this.journey = null;
        this.catalog = catalog;
        this.ruleSets = ruleSets;
    }

    /** Holds the study of a journey against it. */
    StudyCheck(Study study, Places places, Journey journey, Catalog catalog, List<RuleSet> ruleSets) {
        this.study = study;
        this.places = places;
        this.brief = null;
        this.journey = journey;
        this.catalog = catalog;
        this.ruleSets = ruleSets;
    }

    /** Everything that is wrong, the first twenty of it. */
    List<Problem> problems() {
        Set<String> axes = new HashSet<>();
        for (int i = 0; i < study.axes().size(); i++) {
            StudyAxis axis = study.axes().get(i);
            Places at = places.key("axes").index(i);
            if (!axes.add(axis.id())) {
                refuse(at.key("id"), "The axis \"" + axis.id() + "\" is given twice. Rename one of them.");
            }
            axis(axis, at);
        }
        for (int i = 0; i < study.leaveOut().size(); i++) {
            leftOut(study.leaveOut().get(i), places.key("leaveOut").index(i).key("when"));
        }
        if (problems.isEmpty()) {
            countable();
        }
        return problems;
    }

    private void axis(StudyAxis axis, Places at) {
        if (axis.settings().isEmpty()) {
            refuse(at, "The axis \"" + axis.id() + "\" has no settings. Give at least one, or remove the axis.");
        }
        Set<String> ids = new HashSet<>();
        Set<String> changes = new LinkedHashSet<>();
        for (int i = 0; i < axis.settings().size(); i++) {
            Setting setting = axis.settings().get(i);
            Places here = at.key("settings").index(i);
            if (!ids.add(setting.id())) {
                refuse(
                        here.key("id"),
                        "The setting \"" + setting.id() + "\" of the axis \"" + axis.id()
                                + "\" is given twice. Rename one of them.");
            }
            setting(setting, here);
            changes.addAll(changes(setting));
        }
        if (changes.isEmpty() && !ids.isEmpty() && ids.size() == axis.settings().size()) {
            refuse(
                    at,
                    "The axis \"" + axis.id()
                            + "\" changes nothing, so its settings would all give the same. Name in one"
                            + " of them what it changes, or remove the axis.");
        }
        for (String change : changes) {
            String other = changedBy.putIfAbsent(change, axis.id());
            if (other != null) {
                refuse(
                        at,
                        "The axes \"" + other + "\" and \"" + axis.id() + "\" both change " + change
                                + ". Put these settings into one axis.");
            }
        }
    }

    private void setting(Setting setting, Places at) {
        Set<String> figures = ids(List.of(Figure.values()), Figure::id);
        setting.limits()
                .keySet()
                .forEach(id -> known(id, figures, "limit", at.key("limits").key(id)));
        Brief ofBrief = brief;
        Journey ofJourney = journey;
        if (ofBrief != null) {
            if (!setting.cars().isEmpty()) {
                refuse(at.key("cars"), "A study of a brief has no cars. Name a journey instead, or leave them out.");
            }
            fitted(setting, ofBrief, at);
        } else if (ofJourney != null) {
            loaded(setting, ofJourney, at);
        }
    }

    private void loaded(Setting setting, Journey ofJourney, Places at) {
        Setting rest = new Setting(
                setting.id(),
                null,
                null,
                List.of(),
                List.of(),
                List.of(),
                setting.cars(),
                setting.limits(),
                List.of(),
                null,
                setting.note());
        if (!rest.equals(setting)) {
            refuse(at, "A setting of a study of a journey changes \"cars\" and \"limits\" alone. Leave the rest out.");
        }
        Set<String> loads = ids(ofJourney.loads(), Load::id);
        Set<String> cars = ids(catalog.transit().cars(), TransitCar::id);
        for (int i = 0; i < setting.cars().size(); i++) {
            Places here = at.key("cars").index(i);
            known(setting.cars().get(i).load(), loads, "load", here.key("load"));
            known(setting.cars().get(i).car(), cars, "car", here.key("car"));
        }
    }

    private void fitted(Setting setting, Brief ofBrief, Places at) {
        known(setting.body(), ids(catalog.bodies(), Body::id), "body", at.key("body"));
        known(setting.carrier(), ids(catalog.carriers(), Carrier::id), "carrier", at.key("carrier"));
        Set<String> units = ids(ofBrief.units(), UnitSpec::id);
        Set<String> items = ids(catalog.items(), Item::id);
        for (int i = 0; i < setting.swaps().size(); i++) {
            Places here = at.key("swaps").index(i);
            known(setting.swaps().get(i).unit(), units, "unit", here.key("unit"));
            known(setting.swaps().get(i).item(), items, "item", here.key("item"));
        }
        for (int i = 0; i < setting.quantities().size(); i++) {
            known(
                    setting.quantities().get(i).unit(),
                    units,
                    "unit",
                    at.key("quantities").index(i).key("unit"));
        }
        for (int i = 0; i < setting.items().size(); i++) {
            change(setting.items().get(i), items, at.key("items").index(i));
        }
        Set<String> sets = ids(ruleSets, RuleSet::id);
        for (int i = 0; i < setting.ruleSets().size(); i++) {
            known(
                    setting.ruleSets().get(i),
                    sets,
                    "rule set",
                    at.key("ruleSets").index(i));
        }
    }

    private void change(ItemChange change, Set<String> items, Places at) {
        if (known(change.item(), items, "item", at.key("item"))) {
            try {
                catalog.item(change.item()).ifPresent(change::of);
            } catch (IllegalArgumentException e) {
                refuse(at, String.valueOf(e.getMessage()));
            }
        }
    }

    private void leftOut(LeftOut one, Places at) {
        Set<String> axes = ids(study.axes(), StudyAxis::id);
        one.when().forEach((axis, settings) -> {
            Places here = at.key(axis);
            if (known(axis, axes, "axis", here)) {
                Set<String> there = study.axes().stream()
                        .filter(known -> known.id().equals(axis))
                        .flatMap(known -> known.settings().stream().map(Setting::id))
                        .collect(Collectors.toCollection(LinkedHashSet::new));
                for (int i = 0; i < settings.size(); i++) {
                    known(settings.get(i), there, "setting", here.index(i));
                }
            }
        });
    }

    private void countable() {
        try {
            StudyPlan.of(study);
        } catch (IllegalArgumentException e) {
            refuse(places.key("axes"), String.valueOf(e.getMessage()));
        }
    }

    /** What a setting changes, in words; two axes must not change the same. */
    private static Set<String> changes(Setting setting) {
        Set<String> changes = new LinkedHashSet<>();
        if (setting.body() != null) {
            changes.add("the body");
        }
        if (setting.carrier() != null) {
            changes.add("the carrier");
        }
        if (setting.crew() != null) {
            changes.add("the crew");
        }
        if (!setting.ruleSets().isEmpty()) {
            changes.add("the rule sets");
        }
        setting.limits().keySet().forEach(id -> changes.add("the limit \"" + id + "\""));
        setting.swaps().forEach(swap -> changes.add("the item of unit \"" + swap.unit() + "\""));
        setting.quantities().forEach(one -> changes.add("the number of units like \"" + one.unit() + "\""));
        setting.cars().forEach(one -> changes.add("the cars of load \"" + one.load() + "\""));
        setting.items().forEach(one -> changes.add("the item \"" + one.item() + "\""));
        return changes;
    }

    private boolean known(@Nullable String id, Collection<String> known, String kind, Places at) {
        if (id == null || known.contains(id)) {
            return true;
        }
        refuse(at, "The " + kind + " \"" + id + "\" is not known." + NearestName.hint(id, known));
        return false;
    }

    private static <T> Set<String> ids(Collection<T> things, Function<T, String> id) {
        return things.stream().map(id).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private void refuse(Places at, String sentence) {
        if (problems.size() < MOST) {
            problems.add(new Problem(at.text(), sentence));
        }
    }
}
