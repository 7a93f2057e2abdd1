package org.shelterwright.catalog.plausible;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.CatalogFormats;

class OdditiesTest {
    private static Item item(String size, String mass, String more) {
        return item(size, mass, "[1, 1, 1]", more);
    }

    private static Item item(String size, String mass, String centre, String more) {
        String text = """
                {"format": "shelterwright-item", "version": 1, "id": "t", "name": "T", "kind": "table",
                 "material": "wood", "size": %s, "mounting": {"surfaces": ["floor"]},
                 "mass": {"massKg": %s, "centre": %s, "basis": "weighed"}%s}
                """.formatted(size, mass, centre, more);
        return CatalogFormats.ITEM.read(text.getBytes(StandardCharsets.UTF_8), "t.json");
    }

    private static Body body(String inside, String pitch, String more) {
        String text = """
                {"format": "shelterwright-body", "version": 1, "id": "b", "name": "B", "inside": %s,
                 "outside": {"from": [-50, -50, -50], "to": [40000, 2500, 2500]},
                 "grids": [{"name": "rail", "surface": "bottom", "first": [0, 0, 0], "along": "x", "pitch": %s,
                            "count": 100, "rowPitch": 10, "rows": 2}],
                 "tare": {"basis": "weighed"}%s}
                """.formatted(inside, pitch, more);
        return CatalogFormats.BODY.read(text.getBytes(StandardCharsets.UTF_8), "b.json");
    }

    private static Carrier carrier(String track, String rating, String gross) {
        String text = """
                {"format": "shelterwright-carrier", "version": 1, "id": "c", "name": "C", "kind": "truck",
                 "bodyAt": [0, 0, 0], "length": 7000, "width": 2500, "grossRatingKg": %s,
                 "axles": [{"name": "1", "x": 0, "track": %s, "tareKg": 4000, "ratingKg": %s, "group": 1}]}
                """.formatted(gross, track, rating);
        return CatalogFormats.CARRIER.read(text.getBytes(StandardCharsets.UTF_8), "c.json");
    }

    private static final String EXIT = ", \"openings\": [{\"name\": \"door\", \"kind\": \"door\", \"wall\": \"rear\","
            + " \"exit\": true, \"area\": {\"from\": [0, 0, 0], \"to\": [0, 800, 1900]}}]";

    @Test
    void findsNothingInSoundEntries() {
        assertThat(ItemOddities.of(item("[600, 1200, 740]", "30", ""))).isEmpty();
        assertThat(BodyOddities.of(body("[4000, 2000, 2000]", "25", EXIT))).isEmpty();
        assertThat(CarrierOddities.of(carrier("2000", "8000", "12000"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "[600, 0.003, 740]|30|true|The size y = 0.003 mm of item t is below 1 mm. Lengths are in millimetres: correct"
                        + " it.",
                "[600, 2, 740]|1|false|The size y = 2 mm of item t is below 10 mm. Lengths are in millimetres: is it right?",
                "[16000, 600, 740]|500|false|The size x = 16000 mm of item t is above 15 m. Lengths are in millimetres: is it"
                        + " right?",
                "[160000, 600, 740]|500|true|The size x = 160000 mm of item t is above 100 m. Lengths are in millimetres:"
                        + " correct it.",
                "[600, 800, 2000]|40000|true|The mass of 40000 kg of item t makes 41667 kg/m³ over its size, denser than lead."
                        + " Correct the mass (kg) or the size (mm).",
                "[600, 800, 2000]|4000|false|The mass of 4000 kg of item t makes 4167 kg/m³ over its size, denser than"
                        + " equipment mostly is. Is it right?",
                "[600, 800, 2000]|0.3|false|The mass of 0.3 kg of item t makes 0 kg/m³ over its size, lighter than foam. Is"
                        + " it right?",
                "[2000, 2000, 2000]|4000|false|The mass of 4000 kg of item t makes 500 kg/m³ over its size and is above 3000"
                        + " kg. Is it right?",
            })
    void tellsOddSizesAndMasses(String size, String mass, boolean absurd, String sentence) {
        assertThat(ItemOddities.of(item(size, mass, ""))).singleElement().satisfies(oddity -> {
            assertThat(oddity.sentence()).isEqualTo(sentence);
            assertThat(oddity.absurd()).isEqualTo(absurd);
        });
    }

    @Test
    void tellsACentreOutsideAndPartsFarAway() {
        Item far = item(
                "[600, 1200, 740]",
                "30",
                ", \"zones\": [{\"name\": \"front\", \"purpose\": \"service\", \"presence\": \"always\","
                        + " \"box\": {\"from\": [600, 0, 0], \"to\": [60000, 1200, 1900]}}]");
        Item outside = item("[600, 1200, 740]", "30", "[700, 1, 1]", "");

        assertThat(ItemOddities.of(far))
                .extracting(Oddity::sentence)
                .containsExactly(
                        "The clear zone \"front\" of item t reaches more than 10 m beyond its size. Lengths are in"
                                + " millimetres: correct it.");
        assertThat(ItemOddities.of(outside))
                .extracting(Oddity::sentence)
                .containsExactly("The centre of mass of item t lies outside its size. Check it.");
    }

    @Test
    void tellsOddBodies() {
        assertThat(BodyOddities.of(body("[4000, 2000, 200]", "25", EXIT)))
                .extracting(Oddity::sentence)
                .containsExactly(
                        "The inside z = 200 mm of body b is not from 300 mm to 30 m. Lengths are in millimetres:"
                                + " correct it.");
        assertThat(BodyOddities.of(body("[4000, 900, 2000]", "25", "")))
                .extracting(Oddity::sentence)
                .containsExactly(
                        "The inside y = 900 mm of body b is not from 1 m to 15 m. Lengths are in millimetres: is it right?",
                        "The body b has no opening by which people leave. Is it right?");
    }

    @Test
    void tellsHolesBeyondTheRangeOfCoordinates() {
        assertThat(BodyOddities.of(body("[4000, 2000, 2000]", "400000", EXIT)))
                .extracting(Oddity::sentence)
                .containsExactly(
                        "The holes of \"rail\" of body b reach beyond its outside. Correct the pitch or the count.");
    }

    @Test
    void tellsOddCarriers() {
        assertThat(CarrierOddities.of(carrier("200", "25000", "3000")))
                .extracting(Oddity::sentence)
                .containsExactly(
                        "The track of 200 mm of axle 1 of carrier c is not from 1 m to 3 m. Is it right?",
                        "The rating of 25000 kg of axle 1 of carrier c is above 20000 kg. Is it right?",
                        "The gross rating of 3000 kg of carrier c is below its tare of 4000 kg. Correct one of them.");
        assertThat(CarrierOddities.of(carrier("2000", "300000", "9000")))
                .singleElement()
                .extracting(Oddity::absurd)
                .isEqualTo(true);
    }
}
