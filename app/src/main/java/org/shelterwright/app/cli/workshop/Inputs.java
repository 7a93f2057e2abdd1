package org.shelterwright.app.cli.workshop;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.file.BriefCheck;
import org.shelterwright.layouts.file.CatalogChanges;
import org.shelterwright.layouts.file.Findings;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.file.OpenedLayout;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.samples.Samples;

/** Opens the briefs and layouts that are named to a verb: files, or samples as {@code sample:NAME}. */
public final class Inputs {
    private static final String SAMPLE = "sample:";

    private final Supplier<Catalog> catalog;
    private final List<RuleSet> ruleSets;

    public Inputs(Supplier<Catalog> catalog, List<RuleSet> ruleSets) {
        this.catalog = catalog;
        this.ruleSets = List.copyOf(ruleSets);
    }

    /**
     * Opens a brief or layout; of a sample, its brief.
     *
     * @throws InputException if it is missing or wrong
     */
    public Opened toFit(String name) {
        return open(name, isSample(name) ? Samples.brief(name.substring(SAMPLE.length())) : file(name));
    }

    /**
     * Opens a brief or layout; of a sample, its layout if it has one.
     *
     * @throws InputException if it is missing or wrong
     */
    public Opened toJudge(String name) {
        if (!isSample(name)) {
            return open(name, file(name));
        }
        String sample = name.substring(SAMPLE.length());
        return open(name, Samples.layout(sample).orElseGet(() -> Samples.brief(sample)));
    }

    /**
     * Takes the name of a file or folder.
     *
     * @throws InputException if no file could be named so
     */
    public static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new InputException(name, "This cannot be the name of a file. Check what you typed.");
        }
    }

    private static boolean isSample(String name) {
        return name.startsWith(SAMPLE);
    }

    private static InputFile file(String name) {
        return InputFile.read(path(name));
    }

    private Opened open(String name, InputFile file) {
        return JsonFormat.nameIn(file).equals(LayoutFormats.BRIEF.name()) ? brief(name, file) : layout(name, file);
    }

    private Opened brief(String name, InputFile file) {
        Sourced<Brief> brief = LayoutFormats.BRIEF.open(file);
        Findings findings = BriefCheck.of(brief.value(), brief.places(), catalog.get(), ruleSets);
        findings.requireUsable();
        Layout empty = Layout.empty(brief.value(), Parts.of(brief.value(), catalog.get()))
                .withContents(Contents.of(brief.value(), catalog.get()));
        return new Opened(name, empty, Fingerprint.NONE, findings.doubts());
    }

    private Opened layout(String name, InputFile file) {
        OpenedLayout opened = LayoutFiles.read(file);
        List<Problem> doubts = new ArrayList<>(opened.doubts());
        CatalogChanges.of(opened.layout(), catalog.get())
                .forEach(change -> doubts.add(new Problem(name, change.sentence())));
        return new Opened(name, opened.layout(), isSample(name) ? Fingerprint.NONE : opened.fingerprint(), doubts);
    }
}
