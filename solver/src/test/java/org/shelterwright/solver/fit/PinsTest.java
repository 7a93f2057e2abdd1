package org.shelterwright.solver.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.solver.fit.planted.PlantedFit;

class PinsTest {
    private final Fitter fitter = new StandardFitter(new Checker(new LimitBook(FitLimits.all()), List.of()));

    @Test
    void leavesPinnedUnitsWhereTheyAreAndFindsPlacesForTheRest() {
        PlantedFit planted = PlantedFit.of(11, 14, 0.15);
        Layout start = start(planted, 4, Pin.ALL);

        Layout found = fit(start);

        assertThat(found.placements()).hasSize(14).containsAllEntriesOf(start.placements());
    }

    @Test
    void keepsAPinnedAxisAndMovesOnlyAlongTheOthers() {
        PlantedFit planted = PlantedFit.of(12, 12, 0.15);
        Layout start = start(planted, 5, new Pin(true, false, false, true));

        Layout found = fit(start);

        start.placements().forEach((unit, before) -> {
            Placement after = found.placements().get(unit);
            assertThat(after.station().pose().at().x())
                    .as(unit)
                    .isEqualTo(before.station().pose().at().x());
            assertThat(after.station().pose().yaw())
                    .isEqualTo(before.station().pose().yaw());
            assertThat(after.pin()).isEqualTo(before.pin());
        });
    }

    @Test
    void keepsAUnitThatIsPinnedWhereItBreaksALimit() {
        PlantedFit planted = PlantedFit.of(13, 10, 0.15);
        Placement any = planted.solution().placements().values().iterator().next();
        Placement off = any.withStation(any.station()
                        .with(any.station().pose().moved(new org.shelterwright.catalog.space.Point(7, 0, 0))))
                .withPin(Pin.ALL);

        Layout found = fit(planted.question().with(off));

        assertThat(found.placements().get(any.unit())).isEqualTo(off);
    }

    private Layout fit(Layout start) {
        return fitter.fit(new FitRequest(start, 1, Budget.moves(400_000), 2, 1), progress -> {}, new StopSignal())
                .options()
                .get(0)
                .layout();
    }

    private static Layout start(PlantedFit planted, int count, Pin pin) {
        Map<String, Placement> kept = new LinkedHashMap<>();
        planted.solution().placements().values().stream()
                .limit(count)
                .forEach(placement -> kept.put(placement.unit(), placement.withPin(pin)));
        return planted.question().withPlacements(kept);
    }
}
