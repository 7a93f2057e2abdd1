package org.shelterwright.catalog.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.space.Size;

/** A person's list of pieces: what is taken, and what is told of the rest. */
class PieceListTest {
    private static PieceList read(String text) {
        return PieceList.read(new InputFile("pieces.csv", text.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> notes(PieceList list) {
        return list.notes().stream().map(ImportNote::text).toList();
    }

    @Test
    void takesWhatIsGiven() {
        PieceList list = read("""
                Name,Depth [mm],Width [mm],Height [mm],Mass [kg],Quantity,Fragile,Upright,Class,Unit,Task,Order,Urgency,Owner
                Spirit can,120,80,220,1.1,2,no,yes,3,locker,Repair,4,soon,technician
                """);

        assertThat(list.rows()).singleElement().satisfies(row -> {
            assertThat(row.kind().id()).isEqualTo("spirit-can");
            assertThat(row.kind().size()).isEqualTo(Size.ofMm(120, 80, 220));
            assertThat(row.kind().mass().massKg()).isEqualTo(1.1);
            assertThat(row.quantity()).isEqualTo(2);
            assertThat(row.within()).isEqualTo("locker");
            assertThat(row.task()).isEqualTo("Repair");
            assertThat(row.order()).isEqualTo(4);
            assertThat(row.owner()).isEqualTo("technician");
            assertThat(row.kind().loose().upright()).isTrue();
            assertThat(row.kind().loose().urgency()).isEqualTo(Urgency.SOON);
            assertThat(row.kind().loose().goods().hazardClass()).isEqualTo("3");
        });
        assertThat(notes(list))
                .containsExactly(
                        "A1: The fields are separated by commas.",
                        "A1: Masses were taken as estimated; centres of mass stay unknown and lie somewhere in the"
                                + " piece.");
    }

    @Test
    void heightUnitsMakeAPieceRackMounted() {
        PieceList list = read("Name;Depth mm;Width mm;Height mm;U\nRadio;300;440;88;2\n");

        assertThat(list.rows().get(0).kind().mount())
                .hasValueSatisfying(mount -> assertThat(mount.units()).isEqualTo(2));
    }

    @Test
    void theWidestMistakesAreToldWithTheirAddresses() {
        PieceList list = read("""
                Name,Depth [mm],Width [mm],Height [mm],Mass [kg],Quantity,Fragile,Class,Urgency,Colour
                ,100,100,100,1,,,,,
                Lamp,abc,100,100,1,,,,,
                Rope,100,100,-5,1,,,,,
                Tape,100,100,50,minus,2.5,maybe,flammable,at dawn,red
                Staff,1 m,6 cm,60,2 lb,,,,,
                """);

        assertThat(list.rows()).hasSize(2);
        assertThat(list.rows().get(1).kind().size()).isEqualTo(Size.ofMm(1000, 60, 60));
        assertThat(list.rows().get(1).kind().mass().massKg()).isEqualTo(0.90718474);
        assertThat(notes(list))
                .contains(
                        "J1: The column was not used: its header is not known.",
                        "B2: The row was left out: it gives no usable name.",
                        "B3: \"abc\" is no number, and was not used.",
                        "A3: The row was left out: it gives no usable depth.",
                        "D4: \"-5\" was not used: a height must be above zero and below 100 m.",
                        "A4: The row was left out: it gives no usable height.",
                        "E5: \"minus\" is no number, and was not used.",
                        "F5: \"2.5\" was not used: it must be a whole number from 1 to 1000.",
                        "G5: \"maybe\" was not used: it must be yes or no.",
                        "H5: \"flammable\" was not used: it is no hazard class such as 3 or 5.1.",
                        "I5: \"at dawn\" was not used: it must be at once, soon or later; later was taken.");
    }

    @Test
    void ofFourHundredRowsWithGapsEachIsToldAndTheRestIsTaken() {
        StringBuilder text = new StringBuilder("Name,Depth [mm],Width [mm],Height [mm],Mass [kg]\n");
        for (int i = 1; i <= 400; i++) {
            String depth = i % 20 == 0 ? "" : i % 33 == 0 ? "wide" : "1" + i % 10 + "0";
            text.append("Piece ")
                    .append(i)
                    .append(',')
                    .append(depth)
                    .append(",100,80,")
                    .append(i % 7 == 0 ? "" : "1.5")
                    .append('\n');
        }

        PieceList list = read(text.toString());

        long gaps = 0;
        for (int i = 1; i <= 400; i++) {
            boolean gap = i % 20 == 0 || i % 33 == 0;
            gaps += gap ? 1 : 0;
            String told = "A" + (i + 1) + ": The row was left out: it gives no usable depth.";
            assertThat(notes(list).contains(told)).as("row %d", i).isEqualTo(gap);
        }
        assertThat(list.rows()).hasSize((int) (400 - gaps));
        assertThat(list.rows())
                .filteredOn(row -> row.kind().mass().massKg() == null)
                .hasSizeGreaterThan(45);
        assertThat(list.rows().stream().map(row -> row.kind().id()).distinct()).hasSize((int) (400 - gaps));
    }

    @Test
    void aTableWithoutHeadersIsRefused() {
        assertThatThrownBy(() -> read("a,b,c\n1,2,3\n"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("one must name the columns name, depth, width and height");
    }

    @Test
    void whateverAFileHoldsItGivesRowsOrASentence() {
        byte[] sound =
                "Name,Depth [mm],Width [mm],Height [mm],Mass [kg],U,Class\nLamp,100,100,80,1,,\nRadio,300,440,80,2,2,3\n"
                        .getBytes(StandardCharsets.UTF_8);
        for (int seed = 0; seed < 1_000; seed++) {
            java.util.Random random = new java.util.Random(seed);
            byte[] bytes = sound.clone();
            for (int i = 0; i < 1 + random.nextInt(6); i++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            try {
                assertThat(PieceList.read(new InputFile("pieces.csv", bytes)).rows())
                        .hasSizeLessThan(10);
            } catch (InputException e) {
                assertThat(e.problems()).as("seed %d", seed).isNotEmpty();
            }
        }
    }
}
