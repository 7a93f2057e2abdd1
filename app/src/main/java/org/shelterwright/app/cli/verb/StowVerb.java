package org.shelterwright.app.cli.verb;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.StowJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.LedgerText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.table.PieceList;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.PieceImport;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.solver.inside.Stower;
import org.shelterwright.solver.inside.Stowing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds places inside the units for the pieces of a brief. */
@Command(
        name = "stow",
        description = {
            "Find places inside the units for all pieces of the inventory: racks are arranged, loose pieces are packed.",
            "Units stay where they are, and pieces that are kept stay too. Every limit is checked afterwards."
        },
        footer = {
            "",
            "The same layout and seed give the same places.",
            "",
            "Examples:",
            "  shelterwright stow river-post/layout.json --out river-post",
            "  shelterwright stow river-post/layout.json --pieces tools.xlsx --out river-post"
        })
public final class StowVerb extends Verb {
    @Parameters(
            paramLabel = "FILE",
            description = "Layout or brief (JSON), or a sample: sample:river-post, sample:water-lab.")
    private String file = "";

    @Option(names = "--out", paramLabel = "FOLDER", required = true, description = "Folder to write the layout into.")
    private String out = "";

    @Option(
            names = "--pieces",
            paramLabel = "LIST",
            description = {
                "List of pieces (CSV or XLSX) to add to the inventory first. Its columns",
                "are name, depth, width, height and, where known, mass, height units,",
                "quantity, fragile, upright, class, unit, task, order, urgency, owner."
            })
    private @Nullable String list;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "Seed of the search (${DEFAULT-VALUE} if not given).")
    private long seed;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public StowVerb(Workshop workshop, Terminal terminal) {
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
        Layout asked = withList(opened.layout());
        checker.scene(asked);
        try (OutFolder folder = OutFolder.open(Inputs.path(out))) {
            folder.see("layout.json");
            Stowing stowing = new Stower(checker).stow(asked, seed);
            String saved = folder.save("layout.json", stowing.layout());
            ExitStatus status = status(stowing.ledger());
            Written written = new Written(folder.path()).add(saved, "Layout, to go on with");
            if (json()) {
                terminal().result(StowJson.of(head(), status.number(), stowing, folder.path(), written.names()));
            } else {
                tell(stowing);
                print(written.lines());
            }
            return status;
        }
    }

    private Layout withList(Layout layout) {
        String named = list;
        if (named == null) {
            return layout;
        }
        PieceImport.Result result = PieceImport.into(layout, PieceList.read(InputFile.read(Inputs.path(named))));
        result.notes().forEach(note -> terminal().message(named + ", " + note));
        return result.layout();
    }

    private void tell(Stowing stowing) {
        terminal().result(LedgerText.headline(stowing.layout().brief().name(), stowing.ledger()));
        terminal().result("");
        terminal()
                .result(Wording.count(stowing.racked(), "piece") + " in racks, "
                        + Wording.count(stowing.stowed(), "piece") + " stowed, "
                        + Wording.count(stowing.toPlace().size(), "piece") + " without a place.");
        List<String> open = stowing.toPlace().stream().map(PieceSpec::name).toList();
        if (!open.isEmpty()) {
            terminal().result("Without a place: " + Wording.list(open) + ".");
        }
        terminal().result("");
        List<Row> rows = stowing.ledger().rows().stream()
                .filter(row -> row.subject() == Subject.RACKS || row.subject() == Subject.STOWAGE)
                .toList();
        print(LedgerText.rows(LedgerText.shortened(rows), stowing.layout(), false));
        terminal().result("");
    }
}
