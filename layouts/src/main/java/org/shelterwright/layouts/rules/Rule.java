package org.shelterwright.layouts.rules;

import org.shelterwright.catalog.source.Source;

/**
 * The value of one figure, and where it comes from.
 *
 * @param value in the unit of the figure
 */
public record Rule(Figure figure, double value, Source source) {
    public Rule {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("The value of " + figure.id() + " must be a finite number.");
        }
    }
}
