package org.shelterwright.app.cli.verb;

import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputException;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Loads a journey, or cargo into a room. */
@Command(
        name = "load",
        description = {
            "Plan a journey: put what goes onto its cars, find positions, propose how it is held, answer every",
            "limit leg by leg, and write load sheets, packing lists and placards.",
            "With --set, load a problem of a published set instead: stow as much cargo as will go into one room,",
            "check the load from scratch, and write a row for each piece. Ctrl-C ends that search and keeps",
            "the best so far."
        },
        footer = {
            "",
            "What is pinned or lashed in the journey stays; where that does not hold enough, more is proposed beside",
            "it. The status is 0 if every limit is met, 1 if one is broken or not assessed. The same seed gives the",
            "same journey.",
            "One problem of a set is searched on one thread; with --moves, the same seed gives the same load.",
            "",
            "Examples:",
            "  shelterwright load sample:road-rail-move --out road-rail-move",
            "  shelterwright load my-journey.json --json > journey-result.json",
            "  shelterwright load --set set.txt --problem 3 --seconds 5 --out load.csv"
        })
public final class LoadVerb extends Verb {
    @Parameters(
            arity = "0..1",
            paramLabel = "JOURNEY",
            description = "Journey (JSON), or the sample sample:road-rail-move.")
    private @Nullable String journey;

    @Option(
            names = "--out",
            paramLabel = "PLACE",
            description = {
                "Of a journey, folder to write the journey and its documents into; of a set, file to write (CSV).",
                "If not given, the result is printed only."
            })
    private @Nullable String out;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "Seed of the search (${DEFAULT-VALUE} if not given). Another seed searches elsewhere.")
    private long seed;

    @Option(names = "--ways", description = "Of a journey, compare ways to go too: each piece on each car there is.")
    private boolean ways;

    @ArgGroup(exclusive = false, heading = "%nOf a published set:%n")
    private @Nullable SetOptions set;

    @Mixin
    private final ParticularsOptions particulars = new ParticularsOptions();

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public LoadVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        SetOptions given = set;
        String named = journey;
        return given != null ? given.file() : named != null ? named : "load";
    }

    @Override
    ExitStatus run() {
        SetOptions given = set;
        String named = journey;
        if (given != null && named != null) {
            throw new InputException("load", "Both a journey and a set of problems are named. Name one of them.");
        }
        if (given != null) {
            return new SetLoading(given, seed, out, workshop(), terminal()).run(json() ? head() : null);
        }
        if (named == null) {
            throw new InputException(
                    "load", "Nothing to load is named. Name a journey, or a set of problems with --set.");
        }
        JourneyLoading loading = new JourneyLoading(workshop(), terminal(), () -> catalog.over(entries()));
        return loading.run(
                new JourneyLoading.Asked(named, seed, ways, out, particulars.particulars()), json() ? head() : null);
    }
}
