package org.shelterwright.solver.inside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/** Many loose pieces into many places, repeatable, and sound by the ledger. */
class StowerTest {
    private static final Checker CHECKER = Checker.standard();
    private static final Catalog CATALOG = BuiltInCatalog.read();
    private static final List<String> SMALL =
            List.of("field-radio", "filter-pack", "cord-set", "eye-shields", "first-aid-kit");

    /** Lockers with drawers in a row, and as many small pieces as asked. */
    private static Layout lockers(int lockers, int pieces) {
        List<UnitSpec> units = new ArrayList<>();
        Map<String, Placement> placements = new TreeMap<>();
        for (int i = 0; i < lockers; i++) {
            String id = "locker-" + i;
            units.add(new UnitSpec(id, "Locker " + i, "gauge-locker-drawers", "storage"));
            placements.put(id, Placement.of(id, Place.onFloor(Pose.at(Point.ofMm(710 * i, 0, 0)))));
        }
        List<PieceSpec> specs = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            specs.add(PieceSpec.of("p" + i, "Piece " + i, SMALL.get(i % SMALL.size())));
        }
        Brief brief = new Brief(
                        "lockers",
                        "Lockers",
                        "container-20",
                        null,
                        null,
                        units,
                        0,
                        List.of(),
                        List.of("shelter-common"),
                        Map.of(),
                        List.of(),
                        null)
                .withInventory(pieces == 0 ? null : new Inventory(List.of(), specs));
        return Layout.empty(brief, Parts.of(brief, CATALOG))
                .withPlacements(placements)
                .withContents(Contents.of(brief, CATALOG));
    }

    @Test
    void sixtyPiecesFindPlacesInTheSameWayEachTime() {
        Layout layout = lockers(8, 60);

        Stowing stowing = new Stower(CHECKER).stow(layout, 1);

        assertThat(stowing.toPlace()).isEmpty();
        assertThat(stowing.stowed()).isEqualTo(60);
        assertThat(stowing.ledger().rows())
                .filteredOn(row -> row.subject() == Subject.STOWAGE && row.verdict() == Verdict.BROKEN)
                .extracting(Row::finding)
                .isEmpty();
        assertThat(new Stower(CHECKER).arranged(layout, 1).contents())
                .isEqualTo(stowing.layout().contents());
    }

    @Test
    void whatIsKeptStays() {
        Layout once = new Stower(CHECKER).stow(lockers(3, 10), 2).layout();
        PiecePlace kept = once.contents().places().get("p7").withKept(true);
        Layout asked = once.withContents(once.contents().withPlaces(Map.of()).with(kept));

        Stowing stowing = new Stower(CHECKER).stow(asked, 3);

        assertThat(stowing.layout().contents().places()).containsEntry("p7", kept);
        assertThat(stowing.toPlace()).isEmpty();
    }

    @Test
    void whatFitsNowhereIsLeftAndTold() {
        Stowing stowing = new Stower(CHECKER).stow(lockers(1, 400), 1);

        assertThat(stowing.toPlace()).isNotEmpty();
        assertThat(stowing.ledger().of("stowage.placed"))
                .singleElement()
                .satisfies(row -> assertThat(row.verdict()).isEqualTo(Verdict.BROKEN));
    }

    @Test
    void aBriefWithoutPiecesStaysAsItIs() {
        Layout layout = lockers(1, 0);

        assertThat(new Stower(CHECKER).arranged(layout, 1)).isSameAs(layout);
    }
}
