package org.shelterwright.layouts.rules;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A set of rules that a brief may choose.
 *
 * @param id such as "shelter-common"
 * @param axleRules road rules for axles and groups that go with it; {@code null} if it has none
 * @param loadCases what everything must be held against; those of all chosen sets apply together
 */
public record RuleSet(
        String id, String name, @Nullable AxleRules axleRules, List<Rule> rules, List<LoadCase> loadCases) {
    public RuleSet {
        rules = List.copyOf(rules);
        loadCases = List.copyOf(loadCases);
    }

    /** A set without load cases. */
    public RuleSet(String id, String name, @Nullable AxleRules axleRules, List<Rule> rules) {
        this(id, name, axleRules, rules, List.of());
    }

    /** Road rules that need more than single figures. */
    public enum AxleRules {
        /** Directive 96/53/EC, Annex I. */
        EU_96_53,
        /** 23 CFR 658.17 with the bridge formula. */
        US_23_CFR_658
    }
}
