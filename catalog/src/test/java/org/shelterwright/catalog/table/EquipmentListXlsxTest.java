package org.shelterwright.catalog.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Size;

class EquipmentListXlsxTest {
    private static final String HEADERS =
            Workbooks.texts(1, "Name", "Depth [mm]", "Width [mm]", "Height [mm]", "Mass [kg]");

    private static List<String> notesAt(ImportResult result, String address) {
        return result.notes().stream()
                .filter(note -> note.address().equals(address))
                .map(ImportNote::sentence)
                .toList();
    }

    private static String row(int row, String name, String... cells) {
        StringBuilder text = new StringBuilder(
                "<row r=\"" + row + "\"><c r=\"A" + row + "\" t=\"inlineStr\"><is><t>" + name + "</t></is></c>");
        for (int i = 0; i < cells.length; i++) {
            text.append("<c r=\"")
                    .append(Cell.address(i + 1, row - 1))
                    .append("\"")
                    .append(cells[i])
                    .append("</c>");
        }
        return text + "</row>";
    }

    @Test
    void readsAWorkbookThatAnotherProgramPartWrote() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "test", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("Equipment");
            List<String> headers = List.of("Name", "Depth [in]", "Width [in]", "Height [in]", "Mass [lb]", "Qty");
            for (int i = 0; i < headers.size(); i++) {
                sheet.value(0, i, headers.get(i));
            }
            sheet.value(1, 0, "Panel");
            sheet.value(1, 1, 1.5);
            sheet.value(1, 2, 19);
            sheet.value(1, 3, 1.75);
            sheet.value(1, 4, 10);
            sheet.value(1, 5, 3);
            workbook.newWorksheet("Notes").value(0, 0, "nothing");
        }

        ImportResult result = EquipmentList.read(new InputFile("list.xlsx", bytes.toByteArray()));

        assertThat(result.items()).hasSize(1);
        assertThat(result.items().get(0).size()).isEqualTo(new Size(38_100, 482_600, 44_450));
        assertThat(result.items().get(0).mass().massKg()).isEqualTo(4.5359237);
        assertThat(result.quantities()).containsEntry("panel", 3);
        assertThat(notesAt(result, "A1"))
                .contains("The sheet \"Equipment\" was read.", "These sheets were not read: \"Notes\".");
    }

    @Test
    void takesFormulasByTheirStoredResultAndSaysSo() {
        ImportResult result = EquipmentList.read(Workbooks.ofRows(HEADERS
                + row(
                        2,
                        "Box",
                        "><f>200*2</f><v>400</v>",
                        "><v>300</v>",
                        "><v>0.1999999999999999999</v>",
                        "><f>1+1</f>")
                + row(3, "Tin", "><v>400</v>", " t=\"e\"><v>#DIV/0!</v>", "><v>200</v>", "><v>2</v>")
                + row(4, "Can", "><v>400</v>", "><v>1E+300</v>", "><v>200</v>", "><v>2</v>")));

        assertThat(result.items()).isEmpty();
        assertThat(notesAt(result, "B2"))
                .containsExactly(
                        "The cell holds a formula; its stored result \"400\" was taken.",
                        "The size z = 0.2 mm of item box is below 1 mm. Lengths are in millimetres: correct it.");
        assertThat(notesAt(result, "A2"))
                .containsExactly("The row gave no item: such a thing does not exist. Maybe a unit is wrong.");
        assertThat(notesAt(result, "C3")).containsExactly("The cell holds the fault \"#DIV/0!\".");
        assertThat(notesAt(result, "C4")).hasSize(1);
    }

    @Test
    void tellsAFormulaWithoutAStoredResult() {
        ImportResult result = EquipmentList.read(
                Workbooks.ofRows(HEADERS + row(2, "Box", "><v>400</v>", "><v>300</v>", "><v>200</v>", "><f>1+1</f>")));

        assertThat(result.items().get(0).mass().massKg()).isNull();
        assertThat(notesAt(result, "E2")).contains("The cell holds the fault \"formula without a stored result\".");
    }

    @Test
    void roundsToAMicrometreAndSaysSo() {
        ImportResult result = EquipmentList.read(Workbooks.ofRows(Workbooks.texts(1, "Name", "D [m]", "W [m]", "H [m]")
                + row(2, "Box", "><v>0.33333333333333331</v>", "><v>0.3</v>", "><v>0.30000000000000004</v>")));

        assertThat(result.items().get(0).size()).isEqualTo(new Size(333_333, 300_000, 300_000));
        assertThat(notesAt(result, "B2")).containsExactly("\"0.333333333333333\" was rounded to 333.333 mm.");
        assertThat(notesAt(result, "D2")).isEmpty();
    }

    @Test
    void readsCellsThatStandFarApart() {
        ImportResult result = EquipmentList.read(Workbooks.ofRows(
                HEADERS + row(900_000, "Box", "><v>400</v>", "><v>300</v>", "><v>200</v>", "><v>2</v>")));

        assertThat(result.items()).extracting(Item::id).containsExactly("box");
    }

    @Test
    void refusesADocumentType() {
        Map<String, String> parts = new LinkedHashMap<>(Workbooks.parts("<?xml version=\"1.0\"?><!DOCTYPE worksheet ["
                + "<!ENTITY secret SYSTEM \"file:///etc/hostname\">]><worksheet><sheetData/></worksheet>"));

        assertThatThrownBy(() -> EquipmentList.read(new InputFile("list.xlsx", Workbooks.zip(parts))))
                .isInstanceOf(InputException.class)
                .hasMessage("list.xlsx: The part xl/worksheets/sheet1.xml of the workbook declares a document type or"
                        + " entity, which is never read. Open it and save it again as XLSX.");
    }

    @Test
    void refusesToUnpackWithoutEnd() {
        Map<String, String> parts = Workbooks.parts("<x/>");
        parts.put("xl/media/picture.bin", "0".repeat(CheckedArchive.LARGEST + 1));
        byte[] bomb = Workbooks.zip(parts);

        assertThat(bomb.length).isLessThan(200_000);
        assertThatThrownBy(() -> EquipmentList.read(new InputFile("list.xlsx", bomb)))
                .hasMessageStartingWith("list.xlsx: The workbook unpacks to more than 60 MB or 2000 parts.");
    }

    @Test
    void refusesACellBeyondEverySheet() {
        InputFile file = Workbooks.ofRows("<row r=\"1\"><c r=\"ZZZZZZ1\"><v>1</v></c></row>");

        assertThatThrownBy(() -> EquipmentList.read(file)).hasMessageContaining("beyond the last column of a sheet");
    }

    @Test
    void refusesBrokenAndForeignWorkbooks() {
        byte[] whole = Workbooks.ofRows(HEADERS).bytes();
        byte[] half = Arrays.copyOf(whole, whole.length / 2);

        assertThatThrownBy(() -> EquipmentList.read(new InputFile("list.xlsx", half)))
                .isInstanceOf(InputException.class);
        assertThatThrownBy(() -> EquipmentList.read(
                        new InputFile("list.xls", new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 1})))
                .hasMessageContaining("a workbook of an older format or one with a password");
        assertThatThrownBy(() -> EquipmentList.read(new InputFile("list.xlsx", new byte[] {1, 2, 3})))
                .hasMessage("list.xlsx: This is no XLSX workbook. Open it and save it again as XLSX.");
        assertThatThrownBy(() -> EquipmentList.read(new InputFile("list.xlsx", new byte[] {'P', 'K', 3, 4})))
                .isInstanceOf(InputException.class);
    }
}
