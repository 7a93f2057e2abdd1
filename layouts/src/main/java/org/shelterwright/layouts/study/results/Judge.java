package org.shelterwright.layouts.study.results;

import java.util.Map;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.study.Found;
import org.shelterwright.layouts.study.Study;
import org.shelterwright.layouts.study.Study.Keep;
import org.shelterwright.layouts.study.StudyPlan;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/** Answers every limit of what a run found, from scratch, and sums it up. Safe for several threads. */
public final class Judge {
    private final Checker checker;
    private final Keep keep;

    public Judge(Checker checker, Study study) {
        this.checker = checker;
        this.keep = study.keepOrAll();
    }

    /**
     * What a search says of its work; of the layout itself nothing is taken from it but the places.
     *
     * @param wishes how far the wishes are missed
     * @param moves moves tried
     * @param seconds time taken (s)
     */
    public record Effort(long wishes, long moves, double seconds) {}

    /** Sums up a journey that was planned for a run. */
    public RunResult judge(StudyPlan.Run run, JourneyScene scene, Ledger ledger, Found found, Effort effort) {
        return summed(run, ledger, RunMeasures.of(scene), found, effort);
    }

    /** Sums up a layout that a run found. */
    public RunResult judge(StudyPlan.Run run, Layout found, Effort effort) {
        Scene scene = checker.scene(found);
        return summed(run, checker.check(found), RunMeasures.of(scene), Found.of(found), effort);
    }

    private RunResult summed(StudyPlan.Run run, Ledger ledger, RunMeasures measures, Found found, Effort effort) {
        long broken = ledger.count(Verdict.BROKEN);
        boolean kept = keep == Keep.ALL || (keep == Keep.UNBROKEN && broken == 0);
        Map<String, String> settings = run.ids();
        return new RunResult(
                run.number(),
                settings,
                run.seed(),
                ledger.worst(),
                new RunResult.Counts(
                        broken,
                        ledger.count(Verdict.CLOSE),
                        ledger.count(Verdict.NOT_ASSESSED),
                        ledger.count(Verdict.MET)),
                Governing.of(ledger).orElse(null),
                measures,
                effort.wishes(),
                effort.moves(),
                effort.seconds(),
                null,
                kept ? found : null);
    }
}
