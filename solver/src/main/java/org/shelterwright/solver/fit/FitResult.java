package org.shelterwright.solver.fit;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.layout.Provenance;

/**
 * What a search found.
 *
 * @param options the best layout first, then truly different ones; empty only if nothing could be placed at all
 * @param whyNot why no option holds every limit; {@code null} if the best does
 */
public record FitResult(List<FitOption> options, @Nullable WhyNot whyNot, long moves, Duration elapsed) {
    public FitResult {
        options = List.copyOf(options);
    }

    /** The same with every option saying where it came from. */
    public FitResult with(Provenance provenance) {
        return new FitResult(
                options.stream()
                        .map(option -> new FitOption(
                                option.layout().withProvenance(provenance), option.ledger(), option.score()))
                        .toList(),
                whyNot,
                moves,
                elapsed);
    }
}
