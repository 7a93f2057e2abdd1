package org.shelterwright.app.cli.verb;

import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.RouteJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.RouteText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.route.RoutePlan;
import org.shelterwright.solver.route.WireRouter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Routes the wires of a layout. */
@Command(
        name = "route",
        description = {
            "Find routes for the wires of a layout through its trays, all together, check every limit, and write the",
            "layout with them. Units stay where they are; routes that are pinned stay as they are."
        },
        footer = {
            "",
            "The same layout gives the same routes.",
            "",
            "Examples:",
            "  shelterwright route river-post/layout.json --out river-post",
            "  shelterwright route sample:water-lab --json > routes.json"
        })
public final class RouteVerb extends Verb {
    private static final String NAME = "layout.json";

    @Parameters(paramLabel = "FILE", description = "Layout (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder to write the layout into, as layout.json; if not given, nothing is written.")
    private @Nullable String out;

    @Option(names = "--missing", description = "Only wires that have no route that holds; the others stay as they are.")
    private boolean missing;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public RouteVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        Checker checker = workshop().checker().get();
        Opened opened = new Inputs(() -> catalog.over(entries()), checker.ruleSets()).toJudge(file);
        warn(opened.doubts());
        Scene scene = checker.scene(opened.layout());
        terminal().progress("Routing wires");
        RoutePlan plan = missing ? WireRouter.complete(scene) : WireRouter.route(scene);
        terminal().wipe();
        Layout routed = plan.in(opened.layout());
        Ledger ledger = checker.check(routed);
        ExitStatus status = status(ledger);
        Written written = null;
        String named = out;
        if (named != null) {
            try (OutFolder folder = OutFolder.open(Inputs.path(named))) {
                written = new Written(folder.path()).add(folder.save(NAME, routed), "Layout with its routes");
            }
        }
        if (json()) {
            terminal().result(RouteJson.of(head(), status.number(), checker.scene(routed), plan, ledger));
        } else {
            print(RouteText.lines(checker.scene(routed), plan, ledger));
            if (written != null) {
                terminal().result("");
                print(written.lines());
            }
        }
        return status;
    }
}
