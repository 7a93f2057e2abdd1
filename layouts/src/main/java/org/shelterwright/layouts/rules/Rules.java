package org.shelterwright.layouts.rules;

import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.rules.RuleSet.AxleRules;

/** The rules that apply to a layout: those of the chosen sets, then those of the brief, the later ones winning. */
public final class Rules {
    private final Map<Figure, Rule> rules;
    private final Set<AxleRules> axleRules;
    private final List<LoadCase> loadCases;

    private Rules(Map<Figure, Rule> rules, Set<AxleRules> axleRules, Map<String, LoadCase> loadCases) {
        this.rules = rules;
        this.axleRules = axleRules;
        this.loadCases = List.copyOf(loadCases.values());
    }

    /**
     * Puts together what applies to a brief.
     *
     * @param sets the rule sets that there are
     * @throws IllegalArgumentException if the brief names a set or a figure that there is not
     */
    public static Rules of(Brief brief, List<RuleSet> sets) {
        return of("brief", brief.id(), brief.ruleSets(), brief.limits(), sets);
    }

    /**
     * Puts together what applies to anything that chooses rule sets and sets limits of its own.
     *
     * @param kind what chooses, such as "brief"
     * @param id of what chooses
     * @param chosen ids of the chosen sets
     * @param limits values by the id of their figure
     * @param sets the rule sets that there are
     * @throws IllegalArgumentException if a set or a figure is named that there is not
     */
    public static Rules of(
            String kind, String id, List<String> chosen, Map<String, Double> limits, List<RuleSet> sets) {
        String owner = kind + " \"" + id + "\"";
        Map<Figure, Rule> rules = new EnumMap<>(Figure.class);
        Set<AxleRules> axleRules = new LinkedHashSet<>();
        Map<String, LoadCase> loadCases = new LinkedHashMap<>();
        for (String name : chosen) {
            RuleSet set = sets.stream()
                    .filter(one -> one.id().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("The rule set \"" + name + "\" of " + owner
                            + " is not known. There are: "
                            + String.join(", ", sets.stream().map(RuleSet::id).toList()) + "."));
            set.rules().forEach(rule -> rules.put(rule.figure(), rule));
            set.loadCases().forEach(loadCase -> loadCases.put(loadCase.id(), loadCase));
            if (set.axleRules() != null) {
                axleRules.add(set.axleRules());
            }
        }
        limits.forEach((named, value) -> {
            Figure figure = Figure.byId(named)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "The " + owner + " sets a limit \"" + named + "\" that is not known."));
            rules.put(figure, new Rule(figure, value, Source.stated(kind + " " + id, named)));
        });
        return new Rules(rules, axleRules, loadCases);
    }

    public Optional<Rule> rule(Figure figure) {
        return Optional.ofNullable(rules.get(figure));
    }

    public OptionalDouble value(Figure figure) {
        Rule rule = rules.get(figure);
        return rule == null ? OptionalDouble.empty() : OptionalDouble.of(rule.value());
    }

    public double valueOr(Figure figure, double otherwise) {
        return value(figure).orElse(otherwise);
    }

    /** The road rules for axles that apply, in the order of the chosen sets. */
    public Set<AxleRules> axleRules() {
        return axleRules;
    }

    /** The same with those load cases only whose ids are given; all if none is. */
    public Rules withLoadCases(Collection<String> ids) {
        Map<String, LoadCase> kept = new LinkedHashMap<>();
        for (LoadCase loadCase : loadCases) {
            if (ids.isEmpty() || ids.contains(loadCase.id())) {
                kept.put(loadCase.id(), loadCase);
            }
        }
        return new Rules(rules, axleRules, kept);
    }

    /** The same figures with other load cases. */
    public Rules replacingLoadCases(List<LoadCase> others) {
        Map<String, LoadCase> replaced = new LinkedHashMap<>();
        others.forEach(one -> replaced.put(one.id(), one));
        return new Rules(rules, axleRules, replaced);
    }

    /** The load cases that apply, in the order of the chosen sets; a later one of the same id takes the place of an earlier. */
    public List<LoadCase> loadCases() {
        return loadCases;
    }
}
