package org.shelterwright.layouts.rules;

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
        Map<Figure, Rule> rules = new EnumMap<>(Figure.class);
        Set<AxleRules> axleRules = new LinkedHashSet<>();
        Map<String, LoadCase> loadCases = new LinkedHashMap<>();
        for (String id : brief.ruleSets()) {
            RuleSet set = sets.stream()
                    .filter(one -> one.id().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("The rule set \"" + id + "\" of brief \""
                            + brief.id() + "\" is not known. There are: "
                            + String.join(", ", sets.stream().map(RuleSet::id).toList()) + "."));
            set.rules().forEach(rule -> rules.put(rule.figure(), rule));
            set.loadCases().forEach(loadCase -> loadCases.put(loadCase.id(), loadCase));
            if (set.axleRules() != null) {
                axleRules.add(set.axleRules());
            }
        }
        brief.limits().forEach((id, value) -> {
            Figure figure = Figure.byId(id)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "The brief \"" + brief.id() + "\" sets a limit \"" + id + "\" that is not known."));
            rules.put(figure, new Rule(figure, value, Source.stated("brief " + brief.id(), id)));
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

    /** The load cases that apply, in the order of the chosen sets; a later one of the same id takes the place of an earlier. */
    public List<LoadCase> loadCases() {
        return loadCases;
    }
}
