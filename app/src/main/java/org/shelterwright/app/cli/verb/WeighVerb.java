package org.shelterwright.app.cli.verb;

import java.nio.file.Files;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.WeighJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.WeighText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Opened;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.app.report.AsBuiltStatement;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.layouts.asbuilt.AsBuilt;
import org.shelterwright.layouts.asbuilt.AsBuiltRecord;
import org.shelterwright.layouts.asbuilt.Prediction;
import org.shelterwright.layouts.asbuilt.Reconciliation;
import org.shelterwright.layouts.asbuilt.Weighing;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.scene.Scene;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds what was built and weighed against layout and prediction. */
@Command(
        name = "weigh",
        description = {
            "Hold what was signed, measured and weighed against the layout: deviations, torques, mass, centre of mass,",
            "and where mass must be that no list has."
        },
        footer = {
            "",
            "The status is 0 if all is signed, within tolerance and as predicted, else 1.",
            "",
            "Example:",
            "  shelterwright weigh river-post/layout.json --record river-post-as-built.json --scale scale.json"
        })
public final class WeighVerb extends Verb {
    private static final String STATEMENT = "mass-statement.csv";

    @Parameters(paramLabel = "FILE", description = "Layout (JSON) with its order, or a sample.")
    private String file = "";

    @Option(names = "--record", paramLabel = "RECORD", description = "Record that the tablet's work pack exported.")
    private @Nullable String record;

    @Option(names = "--scale", paramLabel = "READINGS", description = "What the scales read (JSON).")
    private @Nullable String scale;

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder for the layout as built and its mass statement.")
    private @Nullable String out;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public WeighVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        if (record == null && scale == null) {
            throw new InputException("weigh", "Name a record (--record), scale readings (--scale), or both.");
        }
        Checker checker = workshop().checker().get();
        Opened opened = new Inputs(() -> catalog.over(entries()), checker.ruleSets()).toJudge(file);
        warn(opened.doubts());
        Scene scene = checker.scene(opened.layout());
        String id = scene.brief().id();
        AsBuilt built = null;
        String recordFile = record;
        if (recordFile != null) {
            AsBuiltRecord read = read(recordFile, AsBuiltRecord.FORMAT);
            same(recordFile, read.layout(), id);
            BoltDownPlan plan = BoltDownPlan.of(scene)
                    .orElseThrow(() -> new InputException(
                            file,
                            "The layout holds no order. Find one: shelterwright bolt-down " + file + " --out FOLDER."));
            built = AsBuilt.of(plan, read, scene.layout());
        }
        Prediction prediction = null;
        Reconciliation found = null;
        String scaleFile = scale;
        if (scaleFile != null) {
            Weighing read = read(scaleFile, Weighing.FORMAT);
            same(scaleFile, read.layout(), id);
            Scene weighed = built == null ? scene : checker.scene(built.layout());
            prediction = Prediction.of(weighed, read);
            found = Reconciliation.of(read, prediction);
        }
        boolean held = (built == null || built.complete())
                && (found == null || !found.differs())
                && (prediction == null || prediction.missing().isEmpty());
        ExitStatus status = held ? ExitStatus.HELD : ExitStatus.OPEN;
        Written written = out == null || built == null ? null : write(built, checker);
        if (json()) {
            terminal().result(WeighJson.of(head(), status.number(), opened.layout(), built, prediction, found));
        } else {
            print(WeighText.lines(opened.layout().brief().name(), built, prediction, found));
            if (written != null) {
                print(written.lines());
            }
        }
        return status;
    }

    private static <T> T read(String name, JsonFormat<T> format) {
        return format.open(InputFile.read(Inputs.path(name))).value();
    }

    private static void same(String name, String layout, String id) {
        if (!layout.equals(id)) {
            throw new InputException(
                    name,
                    "It is of the layout \"" + layout + "\", but the layout here is \"" + id
                            + "\". Take the right one.");
        }
    }

    private Written write(AsBuilt built, Checker checker) {
        try (OutFolder folder = OutFolder.open(Inputs.path(out == null ? "." : out))) {
            folder.see("as-built.json");
            Written written = new Written(folder.path())
                    .add(
                            folder.save("as-built.json", built.layout()),
                            "Layout with the units where they were measured");
            byte[] statement = AsBuiltStatement.csv(checker.scene(built.layout()));
            folder.fill(aside -> Files.write(aside.resolve(STATEMENT), statement));
            return written.add(STATEMENT, "Mass statement of what was built");
        }
    }
}
