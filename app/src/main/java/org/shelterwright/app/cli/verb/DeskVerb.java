package org.shelterwright.app.cli.verb;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.DeskJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Opens the window. */
@Command(
        name = "desk",
        description =
                "Open the window, to look at a layout or a journey and to change it by hand with every limit answering.",
        footer = {
            "",
            "The status is 0 once the window was closed. It needs a display; without one, use the other verbs.",
            "",
            "Examples:",
            "  shelterwright desk sample:river-post",
            "  shelterwright desk river-post/layout.json"
        })
public final class DeskVerb extends Verb {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = {
                "Layout, brief or journey (JSON), or one of the samples sample:river-post,",
                "sample:water-lab, sample:too-much, sample:road-rail-move.",
                "Without it, what was open last opens again."
            })
    private @Nullable String file;

    public DeskVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file == null ? "desk" : file;
    }

    @Override
    ExitStatus run() {
        workshop().desk().open(workshop(), Optional.ofNullable(file));
        if (json()) {
            terminal().result(DeskJson.of(head(), ExitStatus.HELD.number()));
        }
        return ExitStatus.HELD;
    }
}
