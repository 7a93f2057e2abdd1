package org.shelterwright.catalog.builtin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.fastener.Fastener;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;

/** Holds the built-in data against published sizes and values. */
class BuiltInStandardSizesTest {
    private static final CatalogEntries ENTRIES = BuiltInCatalog.entries();
    private static final Catalog CATALOG = ENTRIES.catalog();

    static Stream<Fastener> fasteners() {
        return ENTRIES.fasteners().stream().flatMap(table -> table.fasteners().stream());
    }

    static Stream<Item> racks() {
        return CATALOG.items().stream().filter(item -> item.kind() == ItemKind.RACK);
    }

    // ISO 668:2013, table of external dimensions and ratings: 1CC and 1D.
    @ParameterizedTest
    @CsvSource({"container-20, 6058, 2438, 2591, 30480", "container-10, 2991, 2438, 2438, 10160"})
    void givesContainersTheirOutsideAndRatingAfterIso668(
            String id, int length, int width, int height, double ratingKg) {
        Body body = CATALOG.body(id).orElseThrow();

        assertThat(body.outside().extent(Axis.X)).isEqualTo(length * Lengths.MM);
        assertThat(body.outside().extent(Axis.Y)).isEqualTo(width * Lengths.MM);
        assertThat(body.outside().extent(Axis.Z)).isEqualTo(height * Lengths.MM);
        assertThat(body.grossRatingKg()).isEqualTo(ratingKg);
    }

    @Test
    void leavesTheContainerAtLeastItsInsideAfterIso668() {
        // ISO 668, least internal dimensions of 1CC: 5867 x 2330 x 2350 mm.
        Body body = CATALOG.body("container-20").orElseThrow();

        assertThat(body.inside().x()).isGreaterThanOrEqualTo(5867 * Lengths.MM);
        assertThat(body.inside().y()).isGreaterThanOrEqualTo(2330 * Lengths.MM);
        assertThat(body.inside().z()).isGreaterThanOrEqualTo(2350 * Lengths.MM);
    }

    // ISO 668:1995, annex A: apertures 101.5 mm from the ends, 89 mm from the sides; centre distances S and P of 1CC
    // 5853 x 2259 mm and of 1D 2787 x 2259 mm (from memory), nominal within 2 mm.
    @ParameterizedTest
    @CsvSource({"container-20, 5853, 2259", "container-10, 2787, 2259"})
    void placesCornerFittingsAfterIso668(String id, int lengthMm, int widthMm) {
        Body body = CATALOG.body(id).orElseThrow();
        List<Provision> fittings = body.provisions().stream()
                .filter(one -> one.use() == Provision.Use.BOTH)
                .toList();
        int[] xs = fittings.stream().mapToInt(p -> p.at().x()).sorted().toArray();
        int[] ys = fittings.stream().mapToInt(p -> p.at().y()).sorted().toArray();

        assertThat(fittings).hasSize(8);
        assertThat(xs[7] - xs[0]).isCloseTo(lengthMm * Lengths.MM, within(2 * Lengths.MM));
        assertThat(ys[7] - ys[0]).isCloseTo(widthMm * Lengths.MM, within(2 * Lengths.MM));
        assertThat(xs[0] - body.outside().x0()).isEqualTo(101_500);
        assertThat(ys[0] - body.outside().y0()).isEqualTo(89_000);
    }

    // IEC 60297-3-100 / EIA-310-D: 1 U = 44.45 mm, panel 482.6 mm wide.
    @ParameterizedTest
    @MethodSource("racks")
    void leavesRoomForTheHeightUnitsThatARackIsNamedFor(Item rack) {
        Matcher units = Pattern.compile("(\\d+) U\\b").matcher(rack.name());

        assertThat(units.find()).isTrue();
        assertThat(rack.size().z()).isGreaterThanOrEqualTo(Integer.parseInt(units.group(1)) * 44_450);
        assertThat(rack.size().y()).isGreaterThanOrEqualTo(482_600);
    }

    @Test
    void drillsSeatRailsAtOneInch() {
        // Floor rails of seats: holes every 1.000 in = 25.4 mm (common practice).
        assertThat(CATALOG.bodies().stream()
                        .flatMap(body -> body.grids().stream())
                        .filter(grid -> grid.name().matches("(seat|floor|middle) rails")))
                .hasSizeGreaterThanOrEqualTo(4)
                .extracting(HoleGrid::pitch)
                .containsOnly(Lengths.INCH);
    }

    // ISO 898-1: stress area pi/4 (d - 0.9382 P)^2; proof stress 580 MPa (8.8 up to M16), 600 MPa (8.8 above M16),
    // 830 MPa (10.9); tensile strength 800, 830 and 1040 MPa. The table's values are rounded.
    @ParameterizedTest
    @MethodSource("fasteners")
    void listsFastenersAsTheFormulasOfIso898(Fastener bolt) {
        double area = Math.PI / 4 * Math.pow(bolt.diameterMm() - 0.9382 * bolt.pitchMm(), 2);
        boolean large = bolt.diameterMm() > 16;
        double proofMPa = bolt.grade().equals("10.9") ? 830 : large ? 600 : 580;
        double tensileMPa = bolt.grade().equals("10.9") ? 1040 : large ? 830 : 800;

        assertThat(bolt.stressAreaMm2()).isCloseTo(area, Percentage.withPercentage(0.3));
        assertThat(bolt.proofN()).isCloseTo(area * proofMPa, Percentage.withPercentage(0.7));
        assertThat(bolt.ultimateN()).isCloseTo(area * tensileMPa, Percentage.withPercentage(0.7));
        assertThat(bolt.thread()).isEqualTo("M" + Math.round(bolt.diameterMm()));
    }

    // ISO 898-1, table of proof loads for coarse threads (as quoted).
    @ParameterizedTest
    @CsvSource({"M6, 11600, 16700", "M10, 33700, 48100", "M16, 91000, 130000", "M24, 212000, 293000"})
    void givesProofLoadsAfterIso898(String thread, double n88, double n109) {
        assertThat(fasteners().filter(bolt -> bolt.thread().equals(thread)))
                .extracting(Fastener::proofN)
                .containsExactlyInAnyOrder(n88, n109);
    }

    // Directive 96/53/EC, Annex I, 1.1, 1.2 and 1.3: length 12.00 m, width 2.55 m, height 4.00 m.
    @ParameterizedTest
    @CsvSource({"truck-two-axle, box-4200", "truck-three-axle, container-20", "trailer-drawbar, box-6000"})
    void keepsCarriersWithBodiesWithinTheSizesOf9653(String carrierId, String bodyId) {
        Carrier carrier = CATALOG.carrier(carrierId).orElseThrow();
        Body body = CATALOG.body(bodyId).orElseThrow();

        assertThat(carrier.length()).isLessThanOrEqualTo(12 * Lengths.M);
        assertThat(carrier.width()).isLessThanOrEqualTo(2_550_000);
        assertThat(body.outside().extent(Axis.Y)).isLessThanOrEqualTo(carrier.width());
        assertThat(carrier.bodyAt().z() + body.outside().z1()).isLessThanOrEqualTo(4 * Lengths.M);
    }

    /** ISO 1496-1, annex C: centres of fork pockets of a loaded 1CC container 2 050 mm apart, within 50 mm (from memory). */
    @Test
    void placesForkPocketsAfterIso1496() {
        Body body = CATALOG.body("container-20").orElseThrow();
        int[] xs = body.provisions().stream()
                .filter(one -> one.use() == Provision.Use.FORK_POCKET)
                .mapToInt(one -> one.at().x())
                .sorted()
                .toArray();

        assertThat(xs).hasSize(4);
        assertThat(xs[3] - xs[0]).isCloseTo(2050 * Lengths.MM, within(50 * Lengths.MM));
        assertThat((xs[3] + xs[0]) / 2).isCloseTo(body.outside().centre().x(), within(5 * Lengths.MM));
    }
}
