package org.shelterwright.app.cli.verb;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.BoltDownJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.BoltDownText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.report.Report;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.OrderFinder;
import org.shelterwright.solver.order.Schedule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the order of bringing in and bolting down, and writes the work pack. */
@Command(
        name = "bolt-down",
        description = {
            "Find an order in which every unit comes in past those before it and can be bolted, and show its steps.",
            "An order that the layout holds is kept, unless it is to be found anew or other wishes are given."
        },
        footer = {
            "",
            "With --out: the layout with its order, and the work pack: step cards (PDF), one page for a tablet",
            "that works without a network (HTML), pick list, tool list and labels.",
            "",
            "Examples:",
            "  shelterwright bolt-down sample:river-post",
            "  shelterwright bolt-down river-post/layout.json --before rack-1,desk --out river-post"
        })
public final class BoltDownVerb extends Verb {
    private static final int USUAL_FITTERS = 2;

    @Parameters(paramLabel = "FILE", description = "Layout (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Option(names = "--out", paramLabel = "FOLDER", description = "Folder to write layout and work pack into.")
    private @Nullable String out;

    @Option(
            names = "--before",
            paramLabel = "FIRST,THEN",
            description = "Bring one unit in before another; may be given several times.")
    private List<String> before = new ArrayList<>();

    @Option(names = "--fitters", paramLabel = "N", description = "People who work at the same time, 1 to 8.")
    private @Nullable Integer fitters;

    @Option(names = "--anew", description = "Find the order anew, though the layout holds one.")
    private boolean anew;

    @Mixin
    private final ParticularsOptions particulars = new ParticularsOptions();

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public BoltDownVerb(Workshop workshop, Terminal terminal) {
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
        Layout layout = opened.layout();
        FoundOrder found = order(checker.scene(layout));
        Layout ordered = layout.withBoltDown(found.order());
        Scene scene = checker.scene(ordered);
        Ledger ledger = checker.check(ordered);
        BoltDownPlan plan = BoltDownPlan.of(scene).orElseThrow();
        Schedule schedule = Schedule.of(plan);
        List<Row> rows = ledger.rows().stream()
                .filter(row -> row.subject() == Subject.BOLT_DOWN)
                .toList();
        ExitStatus status = status(new Ledger(rows));
        Written written = out == null ? null : write(scene, ledger, Inputs.path(out));
        if (json()) {
            terminal()
                    .result(BoltDownJson.of(
                            head(),
                            status.number(),
                            ordered,
                            plan,
                            schedule,
                            found,
                            rows,
                            written == null ? List.of() : written.names()));
            return status;
        }
        print(BoltDownText.lines(ordered, plan, schedule, found, rows));
        if (written != null) {
            terminal().result("");
            print(written.lines());
        }
        return status;
    }

    private FoundOrder order(Scene scene) {
        BoltDownOrder held = scene.layout().boltDown();
        int people = fitters != null ? fitters : held == null ? USUAL_FITTERS : held.fitters();
        if (people < 1 || people > BoltDownOrder.MOST_FITTERS) {
            throw new InputException(
                    "--fitters",
                    "The number of fitters must be 1 to " + BoltDownOrder.MOST_FITTERS + ", but is " + people + ".");
        }
        List<Before> wishes = new ArrayList<>(held == null ? List.of() : held.before());
        before.forEach(text -> wishes.add(wish(scene, text)));
        boolean whole = held != null
                && scene.units().stream().allMatch(unit -> held.units().contains(unit.id()));
        if (held != null && whole && !anew && before.isEmpty()) {
            return FoundOrder.kept(held.withFitters(people));
        }
        terminal().progress("Finding an order");
        FoundOrder found = new OrderFinder().find(scene, wishes, people);
        terminal().wipe();
        return found;
    }

    private static Before wish(Scene scene, String text) {
        String[] parts = text.split(",", -1);
        if (parts.length != 2) {
            throw new InputException(
                    "--before", "\"" + text + "\" must be two ids of units with a comma between, such as rack-1,desk.");
        }
        for (String part : parts) {
            if (scene.unit(part).isEmpty()) {
                List<String> known =
                        scene.units().stream().map(unit -> unit.id()).toList();
                throw new InputException(
                        "--before", "No unit \"" + part + "\" is placed." + NearestName.hint(part, known));
            }
        }
        if (parts[0].equals(parts[1])) {
            throw new InputException("--before", "The unit \"" + parts[0] + "\" cannot be in before itself.");
        }
        return new Before(parts[0], parts[1], null);
    }

    private Written write(Scene scene, Ledger ledger, Path target) {
        try (OutFolder folder = OutFolder.open(target)) {
            terminal().progress("Writing the work pack");
            folder.see("layout.json");
            Written written = new Written(folder.path());
            written.add(folder.save("layout.json", scene.layout()), "Layout with its order");
            written.add(new Report(workshop().version().line())
                    .writeWorkPack(scene, ledger, particulars.particulars(), folder.path()));
            terminal().wipe();
            return written;
        }
    }
}
