package org.shelterwright.app.cli.verb;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.RevisionJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.RevisionText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Interrupts.Watch;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.revision.RevisionDocuments;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.insight.Grown;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Provenance;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.layouts.study.ItemChange;
import org.shelterwright.solver.change.ChangeRequest;
import org.shelterwright.solver.change.ChangeResult;
import org.shelterwright.solver.change.SmallestChange;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StopSignal;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds the smallest change of a layout for a changed list. */
@Command(
        name = "revise",
        description = {
            "After the list changed, keep the most drilled holes and cut cables.",
            "Finds a layout for the changed list and says which checks, drawings, steps and documents change. What need not"
                    + " move stays; the rest is loosened bit by bit."
        },
        footer = {
            "",
            "The same layout, list, seed and moves give the same.",
            "The status is 0 if every limit is met, 1 if not.",
            "",
            "Examples:",
            "  shelterwright revise river-post/layout.json new-list.json --out revision-b",
            "  shelterwright revise sample:river-post --change battery-box-24v:deeper=40 --out revision-b"
        })
public final class ReviseVerb extends Verb {
    private static final long USUAL_MOVES = 300_000;
    private static final long MOST_MOVES = 1_000_000_000_000L;

    @Parameters(
            index = "0",
            paramLabel = "LAYOUT",
            description = "Layout as it is (JSON), or a sample: sample:river-post.")
    private String file = "";

    @Parameters(
            index = "1",
            paramLabel = "BRIEF",
            arity = "0..1",
            description = "Brief with the changed list (JSON); if not given, that of the layout.")
    private @Nullable String list;

    @Option(
            names = "--change",
            paramLabel = "ITEM:WHAT",
            converter = ItemChangeText.class,
            description = "An item that comes otherwise: deeper, wider, taller (mm), heavier (kg), such as"
                    + " battery-box-24v:deeper=40,heavier=12. May be given several times.")
    private List<ItemChange> changes = new ArrayList<>();

    @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "Folder to write into.")
    private String out = "";

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "Seed of the searches (${DEFAULT-VALUE} if not given).")
    private long seed;

    @Option(
            names = "--moves",
            paramLabel = "NUMBER",
            defaultValue = "" + USUAL_MOVES,
            description = "Moves that each search tries (${DEFAULT-VALUE} if not given).")
    private long moves;

    @Option(names = "--fresh", description = "Also fit the changed list from nothing, and say what that would keep.")
    private boolean fresh;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateText.class,
            description = "Date of the document, such as 2026-03-01 (today if not given).")
    private @Nullable LocalDate date;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public ReviseVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        if (moves < 1 || moves > MOST_MOVES) {
            throw new InputException("--moves", "This is " + moves + ", but must be from 1 to " + MOST_MOVES + ".");
        }
        Checker checker = workshop().checker().get();
        Opened opened = LayoutInput.open(file, () -> catalog.over(entries()), checker);
        warn(opened.doubts());
        Layout before = opened.layout();
        Layout asked = asked(before, checker);
        Fitter fitter = workshop().fitter().apply(checker);
        int threads = Runtime.getRuntime().availableProcessors();
        StopSignal stop = new StopSignal();
        try (OutFolder folder = OutFolder.open(Inputs.path(out));
                Watch watch = workshop().interrupts().watch(stop::stop)) {
            terminal().progress("Looking for the smallest change");
            ChangeResult found = new SmallestChange(checker, fitter)
                    .find(new ChangeRequest(before, asked, seed, moves, threads), stop);
            Revision anew = fresh ? anew(checker, fitter, before, asked, threads, stop) : null;
            terminal().wipe();
            Revision revision = found.revision();
            Layout after = revision.after()
                    .layout()
                    .withProvenance(new Provenance(workshop().version().number(), seed, null));
            LocalDate given = date;
            RevisionDocuments make = new RevisionDocuments(workshop().version().line());
            Written written = new Written(folder.path())
                    .add(folder.save("layout.json", after), "Layout of the new revision")
                    .add(Folding.write(make.write(revision, given == null ? LocalDate.now() : given), folder));
            ExitStatus status = status(revision.ledgerAfter());
            if (json()) {
                terminal().result(RevisionJson.of(head(), status.number(), revision, found, anew, written.names()));
            } else {
                print(RevisionText.change(before.brief().name(), found, anew));
                terminal().result("");
                print(written.lines());
            }
            return status;
        }
    }

    /** The layout with the changed list: the brief that was named, and items that come otherwise. */
    private Layout asked(Layout before, Checker checker) {
        Layout asked = before;
        String named = list;
        if (named != null) {
            Opened brief = new Inputs(() -> catalog.over(entries()), checker.ruleSets()).toFit(named);
            warn(brief.doubts());
            asked = Grown.onto(before, brief.layout());
        }
        if (named == null && changes.isEmpty()) {
            throw new InputException("revise", "Name a brief with the changed list, or what changes with --change.");
        }
        Map<String, Item> items = new LinkedHashMap<>();
        for (ItemChange change : changes) {
            Item old = items.getOrDefault(change.item(), asked.parts().items().get(change.item()));
            if (old == null) {
                throw new InputException(
                        "--change",
                        "The layout has no unit of the item \"" + change.item() + "\"."
                                + NearestName.hint(
                                        change.item(), asked.parts().items().keySet()));
            }
            items.put(change.item(), change.of(old));
        }
        return items.isEmpty() ? asked : Grown.items(asked, items);
    }

    private @Nullable Revision anew(
            Checker checker, Fitter fitter, Layout before, Layout asked, int threads, StopSignal stop) {
        terminal().progress("Fitting from nothing");
        Layout start = Layout.empty(asked.brief(), asked.parts()).withContents(asked.contents());
        FitResult fitted = fitter.withoutReasons()
                .fit(new FitRequest(start, seed, Budget.moves(Budget.USUAL_MOVES), threads, 1), progress -> {}, stop);
        return fitted.options().isEmpty()
                ? null
                : Revision.of(checker, before, fitted.options().get(0).layout());
    }
}
