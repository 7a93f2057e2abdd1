package org.shelterwright.app.cli.verb;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.MarginJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.MarginText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.insight.Growth;
import org.shelterwright.layouts.insight.UnitGrowth;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says how much each unit may grow. */
@Command(
        name = "growth",
        description = {
            "Say how much each unit may grow in mass and size.",
            "Each grows by itself, one way at a time, until a limit breaks that held; told is which. What grows deeper"
                    + " grows at its front; fixings and all else stay."
        },
        footer = {
            "",
            "Looked at are up to " + Growth.MOST_KG + " kg and " + Growth.MOST_MM + " mm.",
            "The status is 0 if every limit of the layout is met, 1 if not.",
            "",
            "Examples:",
            "  shelterwright margin growth sample:river-post",
            "  shelterwright margin growth river-post/layout.json --unit rack-1,battery-box"
        })
public final class MarginGrowthVerb extends Verb {
    @Parameters(paramLabel = "FILE", description = "Layout (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Option(names = "--unit", paramLabel = "UNIT", split = ",", description = "Only these units (all if not given).")
    private @Nullable List<String> units;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public MarginGrowthVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        Checker checker = workshop().checker().get();
        Opened opened = LayoutInput.open(file, () -> catalog.over(entries()), checker);
        warn(opened.doubts());
        Growth growth = new Growth(checker, opened.layout());
        List<UnitSpec> chosen = chosen(growth.units());
        terminal().progress("Growing " + chosen.size() + " units");
        Stream<UnitSpec> some = chosen.parallelStream();
        List<UnitGrowth> found = some.map(growth::of).toList();
        terminal().wipe();
        ExitStatus status = status(checker.check(opened.layout()));
        if (json()) {
            terminal().result(MarginJson.growth(head(), status.number(), opened.layout(), found));
        } else {
            print(MarginText.growth(opened.layout().brief().name(), found));
        }
        return status;
    }

    private List<UnitSpec> chosen(List<UnitSpec> all) {
        List<String> asked = units;
        if (asked == null) {
            return all;
        }
        List<String> ids = all.stream().map(UnitSpec::id).toList();
        List<UnitSpec> chosen = new ArrayList<>();
        for (String id : asked) {
            if (!ids.contains(id)) {
                throw new InputException(
                        "--unit", "The unit \"" + id + "\" is not placed there." + NearestName.hint(id, ids));
            }
            chosen.add(all.get(ids.indexOf(id)));
        }
        return chosen;
    }
}
