package org.shelterwright.catalog.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.catalog.body.Compartment;
import org.shelterwright.catalog.body.EntryPanel;
import org.shelterwright.catalog.body.Tray;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.plausible.CableOddities;
import org.shelterwright.catalog.plausible.Oddity;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

class CablesTest {
    private static final CatalogEntries ENTRIES = BuiltInCatalog.entries();

    static Stream<Cable> cables() {
        return ENTRIES.cables().stream();
    }

    private static Cable cable(int diameter, Integer bend, Conductors conductors, Double kgPerM) {
        return new Cable(
                "c",
                "C",
                "f",
                CableClass.POWER,
                diameter,
                bend,
                conductors,
                kgPerM,
                null,
                null,
                null,
                List.of(),
                null,
                Source.stated("Test", null),
                null);
    }

    /** ASTM B258: diameter (mm) and cross-section (mm²) by gauge; seen. */
    @ParameterizedTest
    @CsvSource({
        "10,2.588,5.261",
        "12,2.053,3.309",
        "14,1.628,2.081",
        "16,1.291,1.309",
        "22,0.6438,0.3255",
        "24,0.5106,0.2047",
        "36,0.127,0.01267",
        "-3,11.684,107.2"
    })
    void wireGaugesHaveThePublishedDiameterAndArea(int gauge, double diameterMm, double areaMm2) {
        assertThat(Awg.diameterMm(gauge)).isCloseTo(diameterMm, within(diameterMm * 5e-4));
        assertThat(Awg.areaMm2(gauge)).isCloseTo(areaMm2, within(areaMm2 * 1e-3));
    }

    @Test
    void aGaugeThatThereIsNotIsRefused() {
        assertThatThrownBy(() -> Awg.diameterMm(57)).hasMessage("The gauge of 57.0 must be from -3.0 to 56.0.");
    }

    /** IEC 60228, greatest resistance at 20 °C of plain copper, classes 2 and 5 (Ω/km); seen in tables that quote it. */
    @ParameterizedTest
    @CsvSource({
        "1.5,12.1,13.3",
        "2.5,7.41,7.98",
        "4,4.61,4.95",
        "6,3.08,3.30",
        "10,1.83,1.91",
        "16,1.15,1.21",
        "25,0.727,0.780",
        "35,0.524,0.554"
    })
    void theBuiltInSeriesHasThePublishedResistances(double areaMm2, double class2, double class5) {
        ConductorTable table = ENTRIES.conductors().stream()
                .filter(one -> one.id().equals("iec-60228-copper"))
                .findFirst()
                .orElseThrow();

        assertThat(table.ohmPerKm(areaMm2, 2)).hasValue(class2);
        assertThat(table.ohmPerKm(areaMm2, 5)).hasValue(class5);
        assertThat(table.ohmPerKm(areaMm2, 6)).isEmpty();
        assertThat(table.source().trust()).isEqualTo(Source.Trust.QUOTED);
    }

    @ParameterizedTest
    @MethodSource("cables")
    void everyBuiltInCableHasTheResistanceOfTheSeriesAndIsPlausible(Cable cable) {
        Conductors conductors = cable.conductors();
        if (conductors != null) {
            OptionalDouble ofSeries = ENTRIES.conductors().stream()
                    .map(table -> table.ohmPerKm(conductors.areaMm2(), conductors.strandClass()))
                    .filter(OptionalDouble::isPresent)
                    .findFirst()
                    .orElse(OptionalDouble.empty());
            assertThat(ofSeries).hasValue(conductors.ohmPerKm());
        }
        assertThat(CableOddities.of(cable)).isEmpty();
        assertThat(cable.note()).startsWith("Invented");
        assertThat(cable.connectors()).isNotEmpty();
    }

    /** Nominal attenuation of RG-213/U and RG-58C/U (dB/100 m) at MHz, from a table of coaxial cables; seen. */
    @ParameterizedTest
    @CsvSource({
        "rf-50-10,50,4.9",
        "rf-50-10,150,8.9",
        "rf-50-10,450,16.3",
        "rf-50-10,850,24.7",
        "rf-50-5,50,10.8",
        "rf-50-5,150,20.0",
        "rf-50-5,850,58.2"
    })
    void linesLoseWhatTheTableSays(String id, double frequencyMHz, double dbPer100m) {
        Attenuation attenuation = ENTRIES.catalog().cable(id).orElseThrow().attenuation();

        assertThat(attenuation).isNotNull();
        assertThat(attenuation.covers(frequencyMHz)).isTrue();
        assertThat(attenuation.per100m(frequencyMHz)).isCloseTo(dbPer100m, within(dbPer100m * 0.025));
    }

    /** Channel of balanced cabling: 100 m, of them 90 m permanent link and 10 m of cords; handbooks of building cabling, seen. */
    @Test
    void fourPairCableIsNoLongerThanThePermanentLinkOfTheChannel() {
        int channel = 100_000_000;
        int cords = 10_000_000;

        assertThat(ENTRIES.catalog().cable("data-4x2").orElseThrow().longest()).isEqualTo(channel - cords);
    }

    @Test
    void aLawOfTheRootAloneWouldComeOutTooLow() {
        // RG-213 scaled by the root from 50 to 850 MHz gives 20.2 dB/100 m where the table has 24.7.
        assertThat(new Attenuation(0, 0, 4.9 / Math.sqrt(50), 50, 850).per100m(850))
                .isCloseTo(20.2, within(0.05));
    }

    @Test
    void sentencesOfWrongCablesSayWhatAndHowMuch() {
        assertThatThrownBy(() -> cable(0, null, null, null))
                .hasMessage("The diameter of 0 mm of cable c must be above zero.");
        assertThatThrownBy(() -> cable(20_000, 8_000, null, null))
                .hasMessage(
                        "The bend radius of 8 mm of cable c is below half its diameter of 20 mm. It counts to the middle"
                                + " of the cable: correct one of them.");
        assertThatThrownBy(() -> new Conductors(3, 1.5, 3, 13.3))
                .hasMessage("The class of stranding of 3 must be 1, 2, 5 or 6 (IEC 60228).");
        assertThatThrownBy(() -> new Attenuation(0, 0, 1, 100, 50))
                .hasMessage("The highest frequency of 50.0 MHz must not be below the lowest of 100.0 MHz.");
        assertThatThrownBy(() -> new ConductorTable(
                        "t",
                        "T",
                        Source.stated("Test", null),
                        List.of(new ConductorTable.Row(4, null, 4.95), new ConductorTable.Row(2.5, null, 7.98))))
                .hasMessage("The sizes of table t must rise, but 2.5 mm² follows 4.0 mm².");
    }

    @Test
    void absurdCablesAreRefusedAndOddOnesDoubted() {
        assertThat(CableOddities.of(cable(300, null, null, null)))
                .extracting(Oddity::sentence, Oddity::absurd)
                .containsExactly(tuple(
                        "The diameter of 0.3 mm of cable c is not from 0.5 to 200 mm. Lengths are in millimetres: correct it.",
                        true));
        assertThat(CableOddities.of(cable(10_000, null, new Conductors(3, 35, 5, 0.554), 2.0)))
                .extracting(Oddity::sentence)
                .containsExactly(
                        "The mass of 2.0 kg/m of cable c is more than that of a rod of copper of its diameter. Correct one of"
                                + " them.",
                        "The conductors of cable c, 3 x 35.0 mm², are larger than the cable. Correct them or the diameter.");
        assertThat(CableOddities.of(cable(10_000, null, new Conductors(3, 1.5, 5, 1.33), null)))
                .extracting(Oddity::absurd)
                .containsExactly(false);
    }

    @Test
    void sentencesOfWrongTraysSayWhatAndWhere() {
        List<Point> path = List.of(Point.ofMm(0, 0, 0), Point.ofMm(1000, 0, 0));
        List<CableClass> power = List.of(CableClass.POWER);
        assertThatThrownBy(() -> new Tray("t", path, 0, 60_000, power))
                .hasMessage("The tray \"t\" must have a width and a depth, but is 0 x 60 mm.");
        assertThatThrownBy(() -> new Tray("t", List.of(path.get(0), Point.ofMm(500, 500, 0)), 100_000, 60_000, power))
                .hasMessage(
                        "Each section of tray \"t\" must run along one axis, from one point to another, but one runs"
                                + " across.");
        assertThatThrownBy(() -> new Tray("t", List.of(path.get(0), path.get(0)), 100_000, 60_000, power))
                .hasMessageEndingWith("but one ends where it begins.");
        assertThatThrownBy(() -> new Tray(
                        "t",
                        path,
                        100_000,
                        60_000,
                        power,
                        List.of(new Compartment(120_000, power)),
                        false,
                        false,
                        null))
                .hasMessage("The compartments of tray \"t\" take 120 mm of its width of 100 mm. Correct one of them.");
        assertThatThrownBy(() -> new Compartment(0, power))
                .hasMessage("The width of a compartment of a tray must be above zero, but is 0 mm.");
        assertThatThrownBy(() -> new EntryPanel("p", Face.REAR, Box.ofMm(0, 0, 0, 0, 10, 10), 0))
                .hasMessage("The entry panel \"p\" must have at least one place, but has 0.");
    }

    @Test
    void aSeparatorMakesTwoCompartments() {
        Tray tray = new Tray(
                "t",
                List.of(Point.ofMm(0, 0, 0), Point.ofMm(1000, 0, 0)),
                100_000,
                60_000,
                List.of(),
                List.of(
                        new Compartment(60_000, List.of(CableClass.POWER)),
                        new Compartment(38_000, List.of(CableClass.SIGNAL))),
                false,
                true,
                null);

        assertThat(tray.partsFor(CableClass.SIGNAL)).containsExactly(1);
        assertThat(tray.partsFor(CableClass.FIBRE)).isEmpty();
        assertThat(tray.areaMm2(1)).isEqualTo(38 * 60);
    }

    @Test
    void aFileWithAnUnknownClassIsRefusedWithItsPlace() {
        Collection<Cable> any = ENTRIES.cables();
        String text = new String(CatalogFormats.CABLE.write(any.iterator().next()), StandardCharsets.UTF_8)
                .replace("\"power\"", "\"pover\"");

        assertThatThrownBy(() -> CatalogFormats.CABLE.read(text.getBytes(StandardCharsets.UTF_8), "mine.json"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("mine.json, line")
                .hasMessageContaining("Did you mean \"power\"?");
    }
}
