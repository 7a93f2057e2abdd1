package org.shelterwright.catalog.transit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.plausible.TransitCarOddities;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

class BuiltInTransitTest {
    private static final Transit TRANSIT = BuiltInCatalog.entries().transit();

    private static TransitCar car(String id) {
        return TRANSIT.car(id).orElseThrow();
    }

    /** Source: ISO 668:2013, outside sizes, least inside sizes of 1AA and 1CC, gross ratings (seen). */
    @ParameterizedTest
    @CsvSource({
        "container-1aa,12192,2438,2591,11998,2330,2350,30480",
        "container-1cc,6058,2438,2591,5867,2330,2350,30480",
        "container-1c,6058,2438,2438,,,,30480",
        "container-1d,2991,2438,2438,,,,10160"
    })
    void containersHaveTheSizesAndRatingsOfTheStandard(
            String id, int length, int width, int height, Integer inside, Integer wide, Integer high, double grossKg) {
        TransitCar car = car(id);

        assertThat(car.outside()).isEqualTo(Size.ofMm(length, width, height));
        assertThat(car.grossRatingKg()).isEqualTo(grossKg);
        if (inside != null) {
            assertThat(car.deck().length()).isEqualTo(inside * 1000);
            assertThat(car.deck().width()).isEqualTo(wide * 1000);
            assertThat(car.deck().clearHeight()).isEqualTo(high * 1000);
        }
    }

    /** Source: public sheet of a covered wagon of class Hbbins (seen). */
    @Test
    void theCoveredWagonIsThatOfItsPublicSheet() {
        TransitCar car = car("covered-wagon-2-axle");

        assertThat(car.deck().length()).isEqualTo(14_636_000);
        assertThat(car.deck().width()).isEqualTo(2_580_000);
        assertThat(car.tareKg()).isEqualTo(16_300);
        assertThat(car.lengthOver()).isEqualTo(15_900_000);
        assertThat(car.doorways().get(0).width()).isEqualTo(7_218_000);
        assertThat(car.loadLimits())
                .containsExactly(
                        new CategoryLoad("A", 15_500),
                        new CategoryLoad("B", 19_500),
                        new CategoryLoad("C", 24_500),
                        new CategoryLoad("D", 28_500));
        // 37.7 m² as the sheet says.
        assertThat(14.636 * 2.580).isCloseTo(37.7, Offset.offset(0.1));
    }

    /** Sources: 96/53/EC annex I 1.1-1.3 (seen); G2 half width, start of the taper and height (seen). */
    @Test
    void outlinesHaveThePublishedOverallSizes() {
        Outline road = TRANSIT.outline("road-eu").orElseThrow();
        assertThat(2 * road.widest()).isEqualTo(2_550_000);
        assertThat(road.highest()).isEqualTo(4_000_000);
        assertThat(road.length()).isEqualTo(12_000_000);
        assertThat(road.combinationLength()).isEqualTo(18_750_000);
        assertThat(2 * TRANSIT.outline("road-eu-conditioned").orElseThrow().widest())
                .isEqualTo(2_600_000);
        assertThat(2 * TRANSIT.outline("road-us").orElseThrow().widest()).isEqualTo(102 * 25_400);

        Outline rail = TRANSIT.outline("rail-g2-static").orElseThrow();
        assertThat(2 * rail.widest()).isEqualTo(3_150_000);
        assertThat(rail.highest()).isEqualTo(4_650_000);
        assertThat(rail.halfWidth(1_200_000, 3_500_000)).isEqualTo(1_575_000);
        assertThat(rail.halfWidth(1_200_000, 3_501_000)).isLessThan(1_575_000);
        assertThat(TRANSIT.outline("rail-g1-static").orElseThrow().highest()).isEqualTo(4_280_000);
    }

    /** Source: CTU Code, annex 7, appendix 2 (seen). */
    @ParameterizedTest
    @CsvSource({
        "SAWN_TIMBER,PLYWOOD,0.45", "SAWN_TIMBER,GROOVED_ALUMINIUM,0.4", "SAWN_TIMBER,STAINLESS_STEEL,0.3",
        "PLANED_TIMBER,PLYWOOD,0.3", "PLANED_TIMBER,GROOVED_ALUMINIUM,0.25", "PLANED_TIMBER,STAINLESS_STEEL,0.2",
        "PLASTIC_PALLET,PLYWOOD,0.2", "PLASTIC_PALLET,GROOVED_ALUMINIUM,0.15", "PLASTIC_PALLET,STAINLESS_STEEL,0.15",
        "ROUGH_METAL,ROUGH_METAL,0.4", "PAINTED_METAL,PAINTED_METAL,0.3", "STEEL_CRATE,PLYWOOD,0.45",
        "STEEL_CRATE,GROOVED_ALUMINIUM,0.3", "STEEL_CRATE,STAINLESS_STEEL,0.2"
    })
    void frictionIsThatOfTheCode(Underside load, FloorMaterial floor, double factor) {
        assertThat(TRANSIT.friction(load, floor).orElseThrow().dry()).isEqualTo(factor);
        assertThat(TRANSIT.friction(load, floor).orElseThrow().wet()).isEqualTo(factor);
        assertThat(TRANSIT.dynamicShare()).isEqualTo(0.75);
    }

    @Test
    void anchorPointsAreNumberedFromTheRear() {
        List<Provision> anchors = car("flat-wagon-4-axle").anchors();

        assertThat(anchors).hasSize(40);
        assertThat(anchors.get(0).name()).isEqualTo("right 1");
        assertThat(car("flat-wagon-4-axle").anchor("left 20").orElseThrow().at())
                .isEqualTo(Point.ofMm(17_800, 2680, 0));
        assertThat(car("flat-wagon-4-axle").anchor("left 21")).isEmpty();
    }

    @Test
    void everyEntryReadsBackAndIsPlausible() {
        assertThat(TRANSIT.cars()).hasSizeGreaterThanOrEqualTo(12).allSatisfy(car -> {
            assertReadsBack(CatalogFormats.TRANSIT_CAR, car);
            assertThat(TransitCarOddities.of(car)).isEmpty();
        });
        assertThat(TRANSIT.outlines()).isNotEmpty().allSatisfy(one -> assertReadsBack(CatalogFormats.OUTLINE, one));
        assertThat(TRANSIT.lashings()).isNotEmpty().allSatisfy(one -> assertReadsBack(CatalogFormats.LASHING, one));
        assertThat(TRANSIT.lineCategories()).allSatisfy(one -> assertReadsBack(CatalogFormats.LINE_CATEGORIES, one));
        assertThat(TRANSIT.frictions()).allSatisfy(one -> assertReadsBack(CatalogFormats.FRICTION, one));
        assertThat(TRANSIT.wagonClasses()).allSatisfy(one -> assertReadsBack(CatalogFormats.WAGON_CLASSES, one));
    }

    private static <T> void assertReadsBack(JsonFormat<T> format, T entry) {
        assertThat(format.read(format.write(entry), "written")).isEqualTo(entry);
    }

    @Test
    void refusesWhatNoCarIs() {
        assertThatThrownBy(() -> new AnchorRow("left", Point.ORIGIN, 0, 3, 1.0))
                .hasMessage("The anchor row left of 3 points needs a pitch.");
        assertThatThrownBy(() -> new Deck(0, 1, null, null, null, FloorMaterial.PLYWOOD, List.of()))
                .hasMessage("The deck of 0 x 0.001 mm must be above zero in both.");
        assertThatThrownBy(() -> new Deck(1000, 1000, null, 2000, 1000, FloorMaterial.PLYWOOD, List.of()))
                .hasMessage("The lowest floor height of 2 mm must not be above the highest of 1 mm.");
        assertThatThrownBy(() -> new WheelGroup("axle", 0, 1, 5, 1500, null))
                .hasMessage(
                        "The axle spacing of axle must be 0 of a single axle and otherwise the distance of its outer axles.");
        assertThatThrownBy(() -> new Doorway("rear door", Face.REAR, 0, 1000))
                .hasMessage("The doorway rear door of 0 x 1 mm must be above zero in both.");
    }

    @Test
    void tellsOddCars() {
        String text = new String(CatalogFormats.TRANSIT_CAR.write(car("flat-wagon-2-axle")), StandardCharsets.UTF_8);
        TransitCar wide = read(text.replace("\"width\": 2740", "\"width\": 4740"));
        TransitCar long1 = read(text.replace("\"length\": 12500", "\"length\": 130000"));
        TransitCar twice = read(text.replace("\"name\": \"left\"", "\"name\": \"right\""));

        assertThat(TransitCarOddities.of(wide).get(0).sentence())
                .isEqualTo("The deck of car flat-wagon-2-axle is 4740 mm wide, more than 4 m. Is it right?");
        assertThat(TransitCarOddities.of(long1).get(0).sentence())
                .isEqualTo(
                        "The deck of 130000 x 2740 mm of car flat-wagon-2-axle is larger than any car. Lengths are in"
                                + " millimetres: correct it.");
        assertThat(TransitCarOddities.of(twice).get(0).sentence())
                .isEqualTo(
                        "The anchor point \"right 1\" of car flat-wagon-2-axle is given twice. Rename one of the rows.");
    }

    private static TransitCar read(String text) {
        return CatalogFormats.TRANSIT_CAR.read(text.getBytes(StandardCharsets.UTF_8), "car");
    }
}
