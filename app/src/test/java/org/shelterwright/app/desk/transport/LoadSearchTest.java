package org.shelterwright.app.desk.transport;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.edit.AddLashing;
import org.shelterwright.layouts.transport.edit.ChangeCar;
import org.shelterwright.layouts.transport.edit.PinStand;
import org.shelterwright.solver.load.StandardLoader;
import org.shelterwright.solver.transport.JourneySearch;

class LoadSearchTest {
    private final WorkAtOnce work = new WorkAtOnce();
    private final JourneySession session = JourneyPost.session();
    private final LoadSearch search =
            new LoadSearch(session, new JourneySearch(JourneyPost.CHECKER, new StandardLoader()), work, "0.1.0");

    private JourneyStanding now() {
        return session.now().orElseThrow();
    }

    @Test
    void whatIsFoundIsOfferedTakenOverAsOneStepAndCheckedFromScratch() {
        JourneyStanding before = now();
        assertThat(search.take()).contains("The search has found nothing yet.");

        search.start(1);
        assertThat(now()).isSameAs(before);
        assertThat(search.stand().get().progress()).isNotNull();
        assertThat(search.take()).isEmpty();

        assertThat(now().history().undoNames()).containsExactly("Take over the load");
        assertThat(now().ledger().all().count(Verdict.BROKEN)).isZero();
        assertThat(now().ledger()).isEqualTo(JourneyPost.CHECKER.check(now().scene()));
        assertThat(now().journey().provenance()).isNotNull();
        session.undo();
        assertThat(now().journey()).isEqualTo(before.journey());
    }

    @Test
    void pinnedPiecesKeepTheirPlacesAndWhatHoldsThem() {
        Lashing own = Lashing.direct("H1", "chain-8", "river-post", "rear right tie-down eye", "right 1");
        session.apply(new PinStand("wagon-1", "river-post", true));
        session.apply(new AddLashing("wagon-1", own));
        session.apply(new AddLashing(
                "wagon-1", Lashing.direct("H2", "chain-8", "generator-trailer", "rear right tie-down eye", "right 9")));
        Stand pinned = now().journey()
                .load("wagon-1")
                .orElseThrow()
                .stand("river-post")
                .orElseThrow();

        search.start(1);
        assertThat(search.take()).isEmpty();

        var load = now().journey().load("wagon-1").orElseThrow();
        assertThat(load.stand("river-post")).contains(pinned);
        assertThat(load.lashings()).contains(own);
        assertThat(load.lashings()).extracting(Lashing::key).doesNotContain("H2");
    }

    @Test
    void afterTheCarsHaveChangedItIsNotTakenOver() {
        search.start(1);
        session.apply(new ChangeCar("wagon-2", "flat-wagon-4-axle-short"));

        assertThat(search.take())
                .contains("What goes, its legs or its cars have changed since this search began. Search again.");
    }

    @Test
    void itGoesOnElsewhereAndSaysWhyItCannotBeStartedTwice() {
        work.hold();
        search.start(1);

        assertThat(search.stand().get().running()).isTrue();
        assertThat(search.obstacle()).contains("A search is going on. Stop it first.");
        search.stop();
        assertThat(search.stand().get().stopping()).isTrue();
        work.letGo();
        assertThat(search.stand().get().running()).isFalse();
        assertThat(search.nothing()).isEmpty();
        assertThat(new LoadSearch(
                                new JourneySession(JourneyPost.CHECKER),
                                new JourneySearch(JourneyPost.CHECKER, new StandardLoader()),
                                work,
                                "0.1.0")
                        .obstacle())
                .contains("No journey is open. Open one, or the sample Road-Rail Move.");
    }
}
