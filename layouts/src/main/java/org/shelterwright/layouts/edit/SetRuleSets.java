package org.shelterwright.layouts.edit;

import java.util.List;
import org.shelterwright.layouts.layout.Layout;

/**
 * Chooses the rule sets of the brief; a later one overrides an earlier one.
 *
 * @param ruleSets their ids; whether there are such is for the check to say
 */
public record SetRuleSets(List<String> ruleSets) implements Edit {
    public SetRuleSets {
        ruleSets = List.copyOf(ruleSets);
    }

    @Override
    public String name() {
        return ruleSets.isEmpty() ? "Choose no rule set" : "Choose rule sets " + String.join(", ", ruleSets);
    }

    @Override
    public Layout apply(Layout layout) {
        return Units.with(
                layout, layout.brief().withRuleSets(ruleSets), layout.parts().items());
    }
}
