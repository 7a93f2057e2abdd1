package org.shelterwright.layouts.ledger.cables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.shelterwright.layouts.ledger.cables.CablePost.at;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.scene.Scene;

/** Routes stay while units move; the ledger that follows says what a full one does. */
class CablesLiveLedgerTest {
    @Test
    void theLiveLedgerFollowsAMoveAsAFullOneDoes() {
        Checker checker = Checker.standard();
        follow(checker, routed());
        follow(checker, routed().withoutRules());
    }

    private static CablePost routed() {
        return new CablePost()
                .power("w1", "supply-3x1.5", 6_000_000)
                .byTray("w1", "supply-3x1.5", "power tray", 300, 1800);
    }

    private static void follow(Checker checker, CablePost post) {
        Layout layout = post.layout();
        LedgerBuilder live = new LedgerBuilder(checker.book());
        Scene scene = checker.scene(layout);
        live.update(scene);
        for (int x : new int[] {1100, 900, 1000, 1300}) {
            scene = scene.with(layout.placements()
                    .get("rack-1")
                    .withStation(Place.onFloor(new Pose(at(x, 0, 0), QuarterTurn.R90))));

            Ledger followed = live.update(scene);

            assertThat(followed.rows()).isEqualTo(checker.check(scene.layout()).rows());
        }
        assertThat(CableNet.of(scene).of("rack-1")).hasSize(1);
    }
}
