package org.shelterwright.app.cli.verb;

import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputException;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;

/** Loads cargo into a room. */
@Command(
        name = "load",
        description = {
            "Load a problem of a published set: stow as much cargo as will go into one room,",
            "check the load from scratch, and write a row for each piece. Ctrl-C ends the search",
            "and keeps the best so far."
        },
        footer = {
            "",
            "One problem is searched on one thread. With --moves, the same seed gives the same load.",
            "",
            "Examples:",
            "  shelterwright load --set set.txt --problem 3 --seconds 5 --out load.csv",
            "  shelterwright load --set set.txt --problem 3 --moves 2000000 --support none --out load.csv"
        })
public final class LoadVerb extends Verb {
    @ArgGroup(exclusive = false)
    private @Nullable SetOptions set;

    public LoadVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        SetOptions given = set;
        return given == null ? "load" : given.file();
    }

    @Override
    ExitStatus run() {
        SetOptions given = set;
        if (given == null) {
            throw new InputException("load", "Nothing to load is named. Name a set of problems with --set.");
        }
        return new SetLoading(given, workshop(), terminal()).run(json() ? head() : null);
    }
}
