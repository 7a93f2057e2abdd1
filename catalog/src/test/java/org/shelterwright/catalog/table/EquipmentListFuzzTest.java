package org.shelterwright.catalog.table;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;

/** Whatever bytes come, an import gives items or says in a sentence why not. */
class EquipmentListFuzzTest {
    private static final String CSV = "Id,Name,Depth [mm],Width [in],Height,Mass [lb],Qty,Kind\n"
            + "a,Rack,600,19,\"1,234\",12.5,2,rack\nb,\"Box \"\"two\"\"\",60 cm,24,900 mm,,1,crate\n";
    private static final String SHEET =
            "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                    + "<sheetData>" + Workbooks.texts(1, "Name", "Depth", "Width", "Height", "Mass")
                    + "<row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>Box</t></is></c><c r=\"B2\"><f>2*3</f><v>600</v></c>"
                    + "<c r=\"C2\"><v>7E2</v></c><c r=\"D2\" t=\"str\"><f>A1</f><v>80</v></c><c r=\"E2\" t=\"e\"><v>#N/A</v></c>"
                    + "</row></sheetData></worksheet>";
    private static final String[] PIECES = {
        "\"",
        ",",
        ";",
        "\n",
        "\r\n",
        "-",
        "1e99",
        "\uFEFF",
        "<",
        ">",
        "r=\"XFD1\"",
        "t=\"s\"",
        "<row>",
        "</c>",
        "&#0;",
        "&lt;",
        "<f t=\"shared\" si=\"9\"/>",
        "<v>-1</v>",
        "1048577",
        "NaN",
        "\u0000",
        "<!DOCTYPE x>",
        "]]>",
        " in",
        "kg",
        "é"
    };

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void survivesChangedText(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            read("list.csv", changed(CSV, random).getBytes(StandardCharsets.UTF_8), seed, i);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void survivesChangedSheets(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            Map<String, String> parts = Workbooks.parts(changed(SHEET, random));
            if (random.nextInt(4) == 0) {
                String name = parts.keySet().toArray(new String[0])[random.nextInt(parts.size())];
                parts.put(name, changed(parts.getOrDefault(name, ""), random));
            }
            read("list.xlsx", Workbooks.zip(parts), seed, i);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void survivesChangedBytes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] whole = Workbooks.zip(Workbooks.parts(SHEET));
        for (int i = 0; i < 100; i++) {
            byte[] bytes = whole.clone();
            for (int n = random.nextInt(1, 8); n > 0; n--) {
                bytes[random.nextInt(2, bytes.length)] = (byte) random.nextInt(256);
            }
            read("list.xlsx", bytes, seed, i);
        }
    }

    @FuzzTest(maxDuration = "20s")
    void survivesAnyBytes(byte[] bytes) {
        read("list.xlsx", bytes, 0, 0);
        read("list.csv", bytes, 0, 0);
    }

    private static String changed(String text, SplittableRandom random) {
        StringBuilder changed = new StringBuilder(text);
        for (int n = random.nextInt(1, 6); n > 0 && !changed.isEmpty(); n--) {
            int at = random.nextInt(changed.length());
            int end = Math.min(changed.length(), at + random.nextInt(8));
            switch (random.nextInt(3)) {
                case 0 -> changed.delete(at, end);
                case 1 -> changed.insert(at, PIECES[random.nextInt(PIECES.length)]);
                default -> changed.insert(random.nextInt(changed.length()), changed.substring(at, end));
            }
        }
        return changed.toString();
    }

    private static void read(String name, byte[] bytes, long seed, int turn) {
        try {
            ImportResult result = EquipmentList.read(new InputFile(name, bytes));
            assertThat(result.items())
                    .as("seed %d, turn %d", seed, turn)
                    .noneMatch(item -> Double.valueOf(0).equals(item.mass().massKg()))
                    .extracting(Item::id)
                    .doesNotHaveDuplicates();
            assertThat(result.quantities()).hasSameSizeAs(result.items());
        } catch (InputException e) {
            assertThat(e.getMessage())
                    .as("seed %d, turn %d", seed, turn)
                    .startsWith(name)
                    .endsWith(".");
        }
    }
}
