package org.shelterwright.catalog.piece;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.space.Face;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** What is read of pieces, and what is said of bad ones. */
class PieceFilesTest {
    private static final String RADIO = """
            {"format": "shelterwright-piece", "version": 1, "id": "radio", "name": "Radio", "size": [350, 440, 87],
             "mass": {"massKg": 9, "centre": [170, 220, 40], "basis": "weighed"},
             "rack": {"units": 2, "frontDepth": 30, "support": "shelf", "airflow": "front-to-rear",
                      "cableFaces": [{"face": "rear", "cableClass": "power", "plug": 40, "bendRadius": 30}]}}
            """;
    private static final String CAN = """
            {"format": "shelterwright-piece", "version": 1, "id": "can", "name": "Can", "size": [120, 80, 220],
             "mass": {"massKg": 1, "basis": "weighed"},
             "loose": {"upright": true, "urgency": "soon",
                       "goods": {"hazardClass": "3", "number": "UN 1987", "apartFrom": ["5.1"]}}}
            """;

    private static CatalogEntries read(String text) {
        return CatalogEntries.read(List.of(new InputFile("p.json", text.getBytes(StandardCharsets.UTF_8))));
    }

    private static void refused(String text, String sentence) {
        assertThatThrownBy(() -> read(text)).isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems())
                .extracting(Problem::sentence)
                .anyMatch(one -> one.contains(sentence)));
    }

    @Test
    void readsWhatIsRackMountedAndWhatIsLoose() {
        Piece radio = read(RADIO).pieces().iterator().next();
        Piece can = read(CAN).pieces().iterator().next();

        assertThat(radio.mount()).hasValueSatisfying(mount -> {
            assertThat(mount.units()).isEqualTo(2);
            assertThat(mount.cableDepth(Face.REAR)).isEqualTo(70_000);
            assertThat(mount.cableDepth(Face.FRONT)).isZero();
        });
        assertThat(can.stowed()).hasValueSatisfying(loose -> {
            assertThat(loose.urgency()).isEqualTo(Urgency.SOON);
            assertThat(loose.goods()).isEqualTo(new DangerousGoods("3", "UN 1987", Set.of("5.1")));
        });
    }

    @Test
    void everyBuiltInPieceReadsBackAsItIs() {
        assertThat(BuiltInCatalog.entries().pieces()).hasSizeGreaterThan(40).allSatisfy(piece -> assertThat(
                        CatalogFormats.PIECE.read(CatalogFormats.PIECE.write(piece), "again"))
                .isEqualTo(piece));
        assertThat(BuiltInCatalog.entries().doubts()).isEmpty();
    }

    @Test
    void everyBuiltInRackMountedPieceFitsTheOpening() {
        assertThat(BuiltInCatalog.read().pieces())
                .filteredOn(piece -> piece.rack() != null && piece.size().y() != RackStandard.PANEL_WIDTH)
                .allSatisfy(piece -> assertThat(piece.size().y()).isLessThanOrEqualTo(RackStandard.OPENING));
    }

    @Test
    void aPieceIsRackMountedOrLoose() {
        refused(
                RADIO.replaceAll("(?s),\\s*\"rack\".*\\]\\}", ""),
                "The piece radio must be either rack-mounted or loose. Give one of \"rack\" and \"loose\".");
    }

    @Test
    void aPieceIsNoHigherThanItsUnits() {
        refused(
                RADIO.replace("440, 87", "440, 89"),
                "The piece radio is 89 mm high, and 2 U are 88.9 mm. Give it more units or less height.");
    }

    @Test
    void aPieceIsNoWiderThanAPanel() {
        refused(
                RADIO.replace("440, 87", "483, 87"),
                "The piece radio is 483 mm wide, and a panel is 482.6 mm. Correct its width.");
    }

    @Test
    void cablesLeaveAtFrontOrRear() {
        refused(RADIO.replace("\"face\": \"rear\"", "\"face\": \"top\""), "Cables of a rack-mounted piece must leave at its front or rear.");
    }

    @Test
    void aHazardClassHasItsForm() {
        refused(
                CAN.replace("\"hazardClass\": \"3\"", "\"hazardClass\": \"flammable\""),
                "The hazard class \"flammable\" must be a class such as 3 or a division such as 5.1.");
    }

    @Test
    void anUnknownKeyIsToldWithTheNearest() {
        refused(CAN.replace("\"urgency\"", "\"urgencie\""), "urgencie");
    }

    @Test
    void aMassThatCannotBeIsRefused() {
        refused(
                CAN.replace("\"massKg\": 1", "\"massKg\": 40"),
                "The mass of 40 kg of piece can makes 18939 kg/m³ over its size, denser than lead. Correct the mass (kg)"
                        + " or the size (mm).");
    }

    @Test
    void aLongPieceIsDoubted() {
        CatalogEntries read = read(CAN.replace("[120, 80, 220]", "[120, 80, 3200]"));

        assertThat(read.doubts())
                .extracting(Problem::sentence)
                .contains("The size z = 3200 mm of piece can is above 3 m. Lengths are in millimetres: is it right?");
    }
}
