package org.shelterwright.catalog.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.table.ColumnMapping.Column;

class EquipmentListCsvTest {
    private static ImportResult read(String... lines) {
        return EquipmentList.read(
                new InputFile("list.csv", String.join("\n", lines).getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> notesAt(ImportResult result, String address) {
        return result.notes().stream()
                .filter(note -> note.address().equals(address))
                .map(ImportNote::sentence)
                .toList();
    }

    @Test
    void takesEveryColumnThatItKnows() {
        ImportResult result = read(
                "Id,Name,Kind,Material,Depth [mm],Width [mm],Height [mm],Mass [kg],Basis,Centre x [mm],Centre y [mm],Centre z [mm],Mounting,Qty,Remarks",
                "rack-9,\"Rack, nine\",rack,steel,800,600,1200,95.5,W,390,300,510,floor,2,from the old post");

        Item item = result.items().get(0);
        assertThat(item.id()).isEqualTo("rack-9");
        assertThat(item.name()).isEqualTo("Rack, nine");
        assertThat(item.kind()).isEqualTo(ItemKind.RACK);
        assertThat(item.size()).isEqualTo(Size.ofMm(800, 600, 1200));
        assertThat(item.mass().massKg()).isEqualTo(95.5);
        assertThat(item.mass().basis()).isEqualTo(MassBasis.WEIGHED);
        assertThat(item.mass().centre()).isEqualTo(Point.ofMm(390, 300, 510));
        assertThat(item.mounting().surfaces()).containsExactly(Surface.FLOOR);
        assertThat(item.note()).isEqualTo("from the old post");
        assertThat(result.quantities()).containsEntry("rack-9", 2);
        assertThat(result.mapping().ignored()).isEmpty();
    }

    @Test
    void convertsInchesAndPoundsExactly() {
        // International yard and pound agreement, 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, both exact.
        // IEC 60297-3-100: 19 in = 482.6 mm, 1 U = 1.75 in = 44.45 mm.
        ImportResult result = read("Name;Depth [in];Width [in];Height;Weight [lb]", "Panel;1.5;19;1.75 in;10");

        assertThat(result.items().get(0).size()).isEqualTo(new Size(38_100, 482_600, 44_450));
        assertThat(result.items().get(0).mass().massKg()).isEqualTo(4.5359237);
    }

    @Test
    void showsHowColumnsWereUnderstood() {
        ImportResult result = read("Item\tD cm\tW cm\tH cm\tPrice\tWidth [mm]\tMass [mm]", "Box\t10\t20\t30\t9\t1\t4");

        assertThat(result.items().get(0).size()).isEqualTo(Size.ofMm(100, 200, 300));
        assertThat(result.mapping().columns())
                .extracting(Column::text)
                .containsExactly(
                        "A \"Item\" is the name.",
                        "B \"D cm\" is the depth in cm.",
                        "C \"W cm\" is the width in cm.",
                        "D \"H cm\" is the height in cm.",
                        "E \"Price\" is not used: its header is not known.",
                        "F \"Width [mm]\" is not used: another column is already the width.",
                        "G \"Mass [mm]\" is not used: mm is no unit of a mass.");
        assertThat(notesAt(result, "A1")).contains("The fields are separated by tabs.");
    }

    @Test
    void neverTakesAMissingMassForZero() {
        ImportResult result = read(
                "Name,Depth mm,Width mm,Height mm,Mass kg", "A,100,100,100,", "B,100,100,100,0", "C,100,100,100,-4");

        assertThat(result.items())
                .allSatisfy(item -> assertThat(item.mass().massKg()).isNull());
        assertThat(notesAt(result, "E2"))
                .containsExactly("No mass of \"A\" is known: what depends on it will not be assessed.");
        assertThat(notesAt(result, "E3")).contains("A mass of zero was taken as not known, and not as zero.");
        assertThat(notesAt(result, "E4"))
                .contains("The cell gives a mass of \"-4\", which is not from 0 to 100000 kg.");
    }

    @Test
    void listsWhatItDropsAndDoubtsWithTheCell() {
        ImportResult result = read(
                "Name,Depth mm,Width mm,Height mm,Mass kg,Qty",
                "A,600,\"1,234\",900,12,1",
                "B,600,700,900,\"1,234\",1",
                "C,600,about 700,900,12,1",
                "D,600,-700,900,12,1",
                "E,600,700 kg,900,12,1",
                "F,600,700,900,\"12,5\",1.5",
                ",600,700,900,12,1",
                "Telemetry");

        assertThat(result.items()).extracting(Item::name).containsExactly("B", "F");
        assertThat(notesAt(result, "C2")).containsExactly("\"1,234\" may mean 1234 or 1.234, and was not used.");
        assertThat(notesAt(result, "A2")).containsExactly("The row gave no item: no usable width is given.");
        assertThat(result.items().get(0).mass().massKg()).isNull();
        assertThat(notesAt(result, "C4")).containsExactly("\"about 700\" is no number, and was not used.");
        assertThat(notesAt(result, "C5"))
                .containsExactly("The cell gives a width of \"-700\", which must be above zero.");
        assertThat(notesAt(result, "C6"))
                .containsExactly("The cell gives the width in \"kg\", which is no unit of it.");
        assertThat(notesAt(result, "E7")).containsExactly("\"12,5\" was read as 12.5.");
        assertThat(notesAt(result, "F7"))
                .containsExactly(
                        "The cell gives a quantity of \"1.5\", which is no whole number from 1 to 10000; 1 was taken.");
        assertThat(notesAt(result, "B8")).containsExactly("The row gave no item: it has neither a name nor an id.");
        assertThat(notesAt(result, "A9"))
                .containsExactly("The row gave no item: no usable depth and width and height is given.");
    }

    @Test
    void leavesOutWhatDoesNotExistAndAsksAboutWhatIsUnusual() {
        ImportResult result = read(
                "Name,Depth mm,Width mm,Height mm,Mass kg", "A,100,100,100,40000", "B,100,100,100,9", "C,6,600,900,1");

        assertThat(result.items()).extracting(Item::name).containsExactly("B", "C");
        assertThat(notesAt(result, "E2"))
                .containsExactly("The mass of 40000 kg of item a makes 40000000 kg/m³ over its size, denser than lead."
                        + " Correct the mass (kg) or the size (mm).");
        assertThat(notesAt(result, "E3"))
                .containsExactly(
                        "The mass of 9 kg of item b makes 9000 kg/m³ over its size, denser than equipment mostly"
                                + " is. Is it right?");
        assertThat(notesAt(result, "B4"))
                .containsExactly(
                        "The size x = 6 mm of item c is below 10 mm. Lengths are in millimetres: is it right?");
    }

    @Test
    void tellsDuplicates() {
        ImportResult byId = read("Id,Name,D mm,W mm,H mm", "a,One,10,10,10", "a,Two,20,20,20");
        ImportResult byName = read("Name,D mm,W mm,H mm", "Box,10,10,10", "Box,20,20,20");

        assertThat(byId.items()).extracting(Item::name).containsExactly("One");
        assertThat(notesAt(byId, "A3"))
                .containsExactly("The row gave no item: its id \"a\" is already given in row 2.");
        assertThat(byName.items()).extracting(Item::id).containsExactly("box", "box-2");
        assertThat(notesAt(byName, "A3"))
                .containsExactly(
                        "The name stands already in row 2: this one got the id \"box-2\". Is it the same thing twice?");
    }

    @Test
    void saysWhatTheTableDoesNotTell() {
        ImportResult result = read("Name,Length,Width,Height", "Box,400,300,200");

        assertThat(result.items().get(0).size()).isEqualTo(Size.ofMm(400, 300, 200));
        assertThat(notesAt(result, "B1"))
                .containsExactly(
                        "The length was taken as the depth of each item, from its back to its front.",
                        "The header \"Length\" states no unit: numbers without one were taken in mm.");
        assertThat(notesAt(result, "A1"))
                .contains(
                        "No column gives masses: they stay unknown and are not assessed.",
                        "No centre of mass given: it stays unknown, and what depends on it is not assessed.",
                        "No column gives the kind: all items were taken as \"other\".");
    }

    @Test
    void findsHeadersBelowATitleAndUnitsBelowHeaders() {
        ImportResult result = read(
                "Equipment of the post,,,,", "", "Name,Depth,Width,Height,Mass", ",cm,cm,cm,g", "Box,40,30,20,500");

        assertThat(result.mapping().headerRow()).isEqualTo(3);
        assertThat(result.items().get(0).size()).isEqualTo(Size.ofMm(400, 300, 200));
        assertThat(result.items().get(0).mass().massKg()).isEqualTo(0.5);
    }

    @Test
    void readsUtf16WithAMark() {
        byte[] text = "\uFEFFName,D mm,W mm,H mm\nKäfig,1,2,3".getBytes(StandardCharsets.UTF_16LE);

        assertThat(EquipmentList.read(new InputFile("list.csv", text)).items())
                .extracting(Item::name)
                .containsExactly("Käfig");
    }

    @Test
    void refusesWhatIsNoTable() {
        assertThatThrownBy(() -> read("just some words"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("list.csv: No row of headers was found in the first 30 filled rows:");
        assertThatThrownBy(() -> read("")).hasMessageContaining("The table is empty.");
        assertThatThrownBy(() ->
                        EquipmentList.read(new InputFile("list.csv", "Käfig".getBytes(StandardCharsets.ISO_8859_1))))
                .hasMessage("list.csv: The file is no text in UTF-8. Save the table as CSV in UTF-8, or as XLSX.");
        assertThatThrownBy(() -> EquipmentList.read(new InputFile("list.csv", new byte[] {65, 0, 66})))
                .hasMessageContaining("it holds zero bytes");
    }

    @Test
    void refusesMoreRowsAndColumnsThanItReads() {
        String header = "Name,D mm,W mm,H mm\n";

        assertThatThrownBy(() -> read(header + "Box,1,2,3\n".repeat(Table.MOST_ROWS)))
                .hasMessage(
                        "list.csv, row 20001: The table has more than 20000 filled rows. Split it into several files.");
        assertThatThrownBy(() -> read(header + "x,".repeat(300)))
                .hasMessageStartingWith("list.csv, cell GS2: The table has more than 200 columns.");
        assertThatThrownBy(() -> read(header + "x".repeat(20_000)))
                .hasMessage("list.csv, cell A2: The text has more than 10000 characters. Shorten it.");
    }
}
