package org.shelterwright.app.cli.verb;

import java.util.List;
import org.shelterwright.app.cli.json.MarginJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.MarginText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.insight.Chance;
import org.shelterwright.layouts.insight.Odds;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how likely limits are exceeded. */
@Command(
        name = "chance",
        description = {
            "Say how likely limits of mass, axles and stability are exceeded.",
            "Masses and centres of mass are drawn from their ranges, evenly and independently, and each draw is held"
                    + " against these limits in all load states."
        },
        footer = {
            "",
            "Beside the share of the draws stands the range that holds the chance with 95 %% confidence, and"
                    + " for sums of masses the chance in closed form.",
            "The status is 0 if no draw exceeds a limit, 1 if one does.",
            "",
            "Example:",
            "  shelterwright margin chance sample:river-post --draws 10000"
        })
public final class MarginChanceVerb extends Verb {
    private static final int MOST = 1_000_000;

    @Parameters(paramLabel = "FILE", description = "Layout (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Option(
            names = "--draws",
            paramLabel = "NUMBER",
            defaultValue = "2000",
            description = "How often to draw (${DEFAULT-VALUE} if not given).")
    private int draws;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "Seed of the draws (${DEFAULT-VALUE} if not given).")
    private long seed;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public MarginChanceVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        if (draws < 1 || draws > MOST) {
            throw new InputException("--draws", "This is " + draws + ", but must be from 1 to " + MOST + ".");
        }
        Checker checker = workshop().checker().get();
        Opened opened = LayoutInput.open(file, () -> catalog.over(entries()), checker);
        warn(opened.doubts());
        terminal().progress("Drawing");
        List<Odds> odds = new Chance(checker.book(), checker.scene(opened.layout())).draw(draws, seed);
        terminal().wipe();
        boolean held = odds.stream().allMatch(one -> one.exceeded() == 0);
        ExitStatus status = held ? ExitStatus.HELD : ExitStatus.OPEN;
        if (json()) {
            terminal().result(MarginJson.chances(head(), status.number(), opened.layout(), draws, seed, odds));
        } else {
            print(MarginText.chances(opened.layout().brief().name(), draws, odds));
        }
        return status;
    }
}
