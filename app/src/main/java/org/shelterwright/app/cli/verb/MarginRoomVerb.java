package org.shelterwright.app.cli.verb;

import org.shelterwright.app.cli.json.MarginJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.MarginText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.insight.RoomLeft;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says what still fits into a layout. */
@Command(
        name = "room",
        description = {
            "Say what still fits, and what is left of what is used up.",
            "Told are the largest free cuboid, the largest on the floor that would break no limit of place, and what is left"
                    + " in kg by axle and floor zone, in amperes and watts by supply, in height units by rack."
        },
        footer = {
            "",
            "The status is 0 if every limit of the layout is met, 1 if not.",
            "",
            "Example:",
            "  shelterwright margin room sample:river-post"
        })
public final class MarginRoomVerb extends Verb {
    @Parameters(paramLabel = "FILE", description = "Layout (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public MarginRoomVerb(Workshop workshop, Terminal terminal) {
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
        RoomLeft left = RoomLeft.of(checker, opened.layout());
        ExitStatus status = status(checker.check(opened.layout()));
        if (json()) {
            terminal().result(MarginJson.room(head(), status.number(), opened.layout(), left));
        } else {
            print(MarginText.room(opened.layout().brief().name(), left));
        }
        return status;
    }
}
