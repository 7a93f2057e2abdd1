package org.shelterwright.app.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.Scene;

/**
 * Writes all documents of a layout into a folder, numbered, with a contents sheet. The same scene, ledger and particulars
 * give the same bytes, workbooks excepted (same cells). Documents are made side by side on all processors. Not for several threads.
 */
public final class Report {
    private final String program;
    private final Chapters chapters;

    /** @param program program and version, such as "Shelterwright 0.1.0" */
    public Report(String program) {
        this(program, Runtime.getRuntime().availableProcessors());
    }

    /** @param threads how many documents may be in the making at once */
    Report(String program, int threads) {
        this.program = program;
        this.chapters = new Chapters(program, threads);
    }

    /**
     * Makes all documents, then writes them. Either all are written or none.
     *
     * @param folder is made if it is not there; documents of the same names in it are replaced
     * @return the files, in the order of the contents sheet, which comes first
     * @throws InputException if the folder cannot be written
     */
    public List<Document> write(Scene scene, Ledger ledger, Particulars particulars, Path folder) {
        List<Chapter> all = new ArrayList<>();
        all.add(DrawingChapters::arrangement);
        all.add(LimitChapters::ledger);
        all.add(LimitChapters::masses);
        for (Situation situation : Situation.values()) {
            all.add((set, issue, press) ->
                    DrawingChapters.picture(set, issue, press, situation, Axonometry.FROM_REAR_RIGHT, "rear right"));
            all.add((set, issue, press) ->
                    DrawingChapters.picture(set, issue, press, situation, Axonometry.FROM_FRONT_LEFT, "front left"));
            all.add((set, issue, press) -> DrawingChapters.plan(set, issue, press, situation));
        }
        for (Situation situation : Situation.values()) {
            all.add((set, issue, press) -> DrawingChapters.model(set, issue, situation));
        }
        all.add(LimitChapters::restraint);
        all.add(LimitChapters::lifting);
        all.add(ServiceChapters::power);
        all.add(ServiceChapters::heat);
        all.add(ServiceChapters::cables);
        all.add(WorkChapters::workPack);
        all.add(WorkChapters::inside);
        return write(all, new Issue(scene, ledger, particulars, program), folder);
    }

    /** Writes the work pack alone. */
    public List<Document> writeWorkPack(Scene scene, Ledger ledger, Particulars particulars, Path folder) {
        return write(List.of(WorkChapters::workPack), new Issue(scene, ledger, particulars, program), folder);
    }

    private List<Document> write(List<Chapter> wanted, Issue issue, Path folder) {
        List<Document> documents = chapters.make(wanted, issue).withContents(issue);
        new SafeFolder(folder).write(documents);
        return documents;
    }
}
