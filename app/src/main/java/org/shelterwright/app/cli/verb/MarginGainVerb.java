package org.shelterwright.app.cli.verb;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.MarginJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.MarginText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.solver.change.GainfulMove;
import org.shelterwright.solver.change.Gains;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says which move gains most on a limit. */
@Command(
        name = "gain",
        description = {
            "Say which unit to move, and how far, to gain most on one limit.",
            "No other limit breaks. Wires that no longer hold are routed again, and the order of bringing in is kept if it"
                    + " still holds."
        },
        footer = {
            "",
            "Units move along what they are mounted on, in steps of 25 mm.",
            "The status is 0 if a move was found, 1 if not.",
            "",
            "Examples:",
            "  shelterwright margin gain sample:river-post --limit mass.centre-along",
            "  shelterwright margin gain river-post/layout.json --limit axles.axle-load --out moved.json"
        })
public final class MarginGainVerb extends Verb {
    private static final int MOST = 50;

    @Parameters(paramLabel = "FILE", description = "Layout (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Option(
            names = "--limit",
            paramLabel = "LIMIT",
            required = true,
            description = "Id of the limit, as \"check --json\" tells it, such as mass.centre-along.")
    private String limit = "";

    @Option(
            names = "--count",
            paramLabel = "NUMBER",
            defaultValue = "5",
            description = "How many moves to tell, each of another unit (${DEFAULT-VALUE} if not given).")
    private int count;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the layout after the best move into this file; there must be none of this name.")
    private @Nullable String out;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public MarginGainVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        if (count < 1 || count > MOST) {
            throw new InputException("--count", "This is " + count + ", but must be from 1 to " + MOST + ".");
        }
        Checker checker = workshop().checker().get();
        if (checker.book().limit(limit).isEmpty()) {
            List<String> ids = checker.book().limits().stream().map(Limit::id).toList();
            throw new InputException(
                    "--limit", "The limit \"" + limit + "\" is not known." + NearestName.hint(limit, ids));
        }
        Opened opened = LayoutInput.open(file, () -> catalog.over(entries()), checker);
        warn(opened.doubts());
        terminal().progress("Moving units");
        Gains gains = new Gains(checker, opened.layout(), limit);
        List<GainfulMove> moves = gains.best(count);
        terminal().wipe();
        String into = out;
        if (into != null && !moves.isEmpty()) {
            LayoutFiles.write(moves.get(0).layout(), Inputs.path(into), Fingerprint.NONE);
        }
        ExitStatus status = moves.isEmpty() ? ExitStatus.OPEN : ExitStatus.HELD;
        if (json()) {
            terminal().result(MarginJson.gains(head(), status.number(), opened.layout(), gains.before(), moves));
        } else {
            print(MarginText.gains(gains.before(), moves));
            if (into != null && !moves.isEmpty()) {
                terminal().result("The layout after the first of them is in " + into + ".");
            }
        }
        return status;
    }
}
