package org.shelterwright.app.desk.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.PinUnit;
import org.shelterwright.layouts.edit.SetCrew;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitProgress;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.Fitter;

class SearchTest {
    private final Checker checker = Checker.standard();
    private final Layout sample =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
    private final Session session = new Session(checker, new TakeOutUnit("rack-1").apply(sample));
    private final AtomicReference<FitRequest> asked = new AtomicReference<>();

    /** Always finds the layout of the sample. */
    private final Fitter finder = (request, observer, stop) -> {
        asked.set(request);
        FitScore score = new FitScore(0, 0, 300_000);
        observer.progress(new FitProgress(1_000, Duration.ofSeconds(1), score));
        Layout found = request.start().withPlacements(sample.placements());
        return new FitResult(
                List.of(new FitOption(found, checker.check(found), score)), null, 1_000, Duration.ofSeconds(1));
    };

    @Test
    void whatWasFoundIsPutAwayAndNothingElseChanges() {
        Search search = new Search(session, finder, new WorkAtOnce(), "0.1");
        search.start(true, 7);
        Layout before = session.now().layout();
        assertThat(search.stand().get().idle()).isFalse();

        search.forget();

        assertThat(search.stand().get().idle()).isTrue();
        assertThat(session.now().layout()).isEqualTo(before);
    }

    @Test
    void whatIsFoundIsOfferedAndChangesNothingUntilItIsTakenOver() {
        Search search = new Search(session, finder, new WorkAtOnce(), "0.1");
        Layout before = session.now().layout();

        search.start(true, 7);

        Stand stand = search.stand().get();
        assertThat(stand.running()).isFalse();
        assertThat(stand.steps()).hasSize(1);
        assertThat(session.now().layout()).isEqualTo(before);
        FitOption option = stand.result().options().get(0);
        assertThat(search.adopt(option, "A")).isEmpty();
        assertThat(session.now().layout().placements()).isEqualTo(sample.placements());
        assertThat(session.now().layout().provenance().seed()).isEqualTo(7);
        assertThat(session.now().history().undoNames()).containsExactly("Take over layout A");
        session.undo();
        assertThat(session.now().layout()).isEqualTo(before);
    }

    @Test
    void routesAndOrderThatWereFoundForThePlacesAreTakenOverWithThemAndTheLedgerIsThatOfTheCard() {
        Fitter finishing = (request, observer, stop) -> {
            FitOption option = new FitOption(sample, checker.check(sample), new FitScore(0, 0, 0));
            return new FitResult(List.of(option), null, 1, Duration.ofSeconds(1));
        };
        session.apply(
                "Without routes", session.now().layout().withRoutes(Map.of()).withBoltDown(null));
        Search search = new Search(session, finishing, new WorkAtOnce(), "0.1");
        search.start(true, 1);
        FitOption option = search.stand().get().result().options().get(0);
        assertThat(Search.stands(option.layout(), session.now().layout())).isFalse();

        assertThat(search.adopt(option, "A")).isEmpty();

        Layout now = session.now().layout();
        assertThat(now.routes()).isEqualTo(sample.routes()).isNotEmpty();
        assertThat(now.boltDown()).isEqualTo(sample.boltDown());
        assertThat(session.now().ledger().rows()).isEqualTo(option.ledger().rows());
        assertThat(Search.stands(option.layout(), now)).isTrue();
    }

    @Test
    void withoutAFirstIdeaOnlyWhatIsPinnedIsKept() {
        session.apply(new PinUnit("desk", Pin.ALL));

        new Search(session, finder, new WorkAtOnce(), "0.1").start(false, 1);

        assertThat(asked.get().start().placements()).containsOnlyKeys("desk");
    }

    @Test
    void aLayoutForAnotherBriefIsNotTakenOver() {
        Search search = new Search(session, finder, new WorkAtOnce(), "0.1");
        search.start(true, 1);
        session.apply(new SetCrew(1));
        Layout before = session.now().layout();

        assertThat(search.adopt(search.stand().get().result().options().get(0), "A"))
                .contains("The brief has changed since this search began. Search again.");
        assertThat(session.now().layout()).isEqualTo(before);
    }

    @Test
    void whatGoesWrongIsSaid() {
        Fitter failing = (request, observer, stop) -> {
            throw new IllegalArgumentException("The wish \"near\" names an unknown unit.");
        };
        Search search = new Search(session, failing, new WorkAtOnce(), "0.1");

        search.start(true, 1);

        assertThat(search.stand().get().failure()).isEqualTo("The wish \"near\" names an unknown unit.");
        assertThat(search.obstacle()).isEmpty();
    }
}
