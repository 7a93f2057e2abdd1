package org.shelterwright.layouts.ledger.transport;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.LegScene;

/**
 * Of the containers, of equal length the one that bears least first: 1D 2802 mm, 1C 5867 mm with a door of 2134 mm, 1CC with one of 2261 mm, 1AA 11 998 mm;
 * doors 2286 mm wide.
 */
class CarChoiceTest {
    private static Optional<String> nearest(int dx, int dy, int dz, double kg) {
        TransportRig rig = new TransportRig()
                .on("container-1d")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 0, 0, dx, dy, dz, kg);
        LegScene leg = rig.leg();
        return CarChoice.nearest(leg, leg.loads().get(0)).map(TransitCar::id);
    }

    @Test
    void theShortestContainerThatTakesALoadIsNamed() {
        assertThat(nearest(3_000, 2_000, 2_000, 1_000)).contains("container-1cc");
        assertThat(nearest(5_867, 2_000, 2_134, 1_000)).contains("container-1cc");
        assertThat(nearest(5_868, 2_000, 2_134, 1_000)).contains("container-1aa");
        assertThat(nearest(3_000, 2_000, 2_135, 1_000)).contains("container-1cc");
        assertThat(nearest(3_000, 2_286, 2_261, 1_000)).contains("container-1cc");
        assertThat(nearest(3_000, 2_287, 2_000, 1_000)).isEmpty();
        assertThat(nearest(3_000, 2_000, 2_262, 1_000)).isEmpty();
    }

    /** ISO 668:2013: 30 480 kg gross (seen), less 2 200 kg of a 1C and 2 300 kg of a 1CC. */
    @Test
    void aContainerMustBearTheLoad() {
        assertThat(nearest(3_000, 2_000, 2_000, 28_180)).contains("container-1cc");
        assertThat(nearest(3_000, 2_000, 2_134, 28_181)).contains("container-1c");
        assertThat(nearest(3_000, 2_000, 2_135, 28_181)).isEmpty();
        assertThat(nearest(3_000, 2_000, 2_000, 28_280)).contains("container-1c");
        assertThat(nearest(3_000, 2_000, 2_000, 28_281)).isEmpty();
        assertThat(nearest(3_000, 2_000, 2_200, 28_181)).isEmpty();
    }

    /** A door in the side takes any width along it. */
    @Test
    void aDoorInTheSideIsJudgedByItsHeight() {
        assertThat(wagon(16_000, 2_600)).contains("covered-wagon-4-axle");
        assertThat(wagon(16_000, 2_601)).isEmpty();
    }

    private static Optional<String> wagon(int dx, int dz) {
        TransportRig rig = new TransportRig().on("covered-wagon-2-axle").crate("a", 0, 0, 0, dx, 2_500, dz, 1_000.0);
        LegScene leg = rig.leg();
        return CarChoice.nearest(leg, leg.loads().get(0)).map(TransitCar::id);
    }

    /** By the sheet of the long flat wagon: 39.5, 47.5 and 55.5 t on lines A, B and C; D as C, and gross 80 t less tare 24.5 t. */
    @Test
    void theLoadLimitOfAWagonFollowsTheLine() {
        assertThat(limit("flat-wagon-4-axle", "A")).isEqualTo(39_500.0);
        assertThat(limit("flat-wagon-4-axle", "B1")).isEqualTo(47_500.0);
        assertThat(limit("flat-wagon-4-axle", "C4")).isEqualTo(55_500.0);
        assertThat(limit("flat-wagon-4-axle", "D2")).isEqualTo(55_500.0);
        assertThat(limit("flat-wagon-4-axle", null)).isEqualTo(55_500.0);
        assertThat(limit("covered-wagon-2-axle", "D4")).isEqualTo(28_500.0);
        assertThat(limit("covered-wagon-2-axle", "B2")).isEqualTo(19_500.0);
        assertThat(limit("flat-wagon-2-axle", "D4"))
                .as("as on C, and gross 40 t less 13 t")
                .isEqualTo(27_000.0);
    }

    private static @Nullable Double limit(String car, @Nullable String category) {
        LegScene leg = new TransportRig()
                .on(car)
                .crate("a", 0, 0, 0, 1_000, 1_000, 1_000, 100.0)
                .along("route-varn", category, 250.0)
                .leg();
        return CarChoice.loadLimitKg(leg.loads().get(0).car(), leg.lineCategory());
    }

    @Test
    void theMendNamesTheCar() {
        TransportRig rig = new TransportRig()
                .on("container-1d")
                .by(Mode.ROAD, "road-eu", "stowage-ctu")
                .crate("a", 0, 0, 0, 3_000, 2_000, 2_000, 1_000.0);

        assertThat(rig.row("deck-length").mend())
                .isEqualTo("Take the container \"Container 20 ft, 1CC\" (container-1cc).");
    }
}
