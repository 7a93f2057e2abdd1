package org.shelterwright.catalog.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.shelterwright.catalog.json.InputFile;

/** Small workbooks of one sheet, written by hand so that a test decides on every character. */
final class Workbooks {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private Workbooks() {}

    /** A workbook whose only sheet holds the given rows, such as {@code <row r="1"><c r="A1"><v>5</v></c></row>}. */
    static InputFile ofRows(String rows) {
        return new InputFile(
                "list.xlsx",
                zip(parts(HEAD + "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows + "</sheetData></worksheet>")));
    }

    static Map<String, String> parts(String sheet) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put(
                "[Content_Types].xml",
                HEAD + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                        + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                        + "<Default Extension=\"rels\""
                        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                        + "<Override PartName=\"/xl/workbook.xml\""
                        + " ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                        + "<Override PartName=\"/xl/worksheets/sheet1.xml\""
                        + " ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>"
                        + "</Types>");
        parts.put("_rels/.rels", relationship("officeDocument", "xl/workbook.xml"));
        parts.put(
                "xl/workbook.xml",
                HEAD + "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + OFFICE
                        + "\"><sheets><sheet name=\"List\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
        parts.put("xl/_rels/workbook.xml.rels", relationship("worksheet", "worksheets/sheet1.xml"));
        parts.put("xl/worksheets/sheet1.xml", sheet);
        return parts;
    }

    static byte[] zip(Map<String, String> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                out.putNextEntry(new ZipEntry(part.getKey()));
                out.write(part.getValue().getBytes(StandardCharsets.UTF_8));
                out.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** A row of texts. */
    static String texts(int row, String... texts) {
        StringBuilder cells = new StringBuilder();
        for (int i = 0; i < texts.length; i++) {
            cells.append("<c r=\"").append(Cell.address(i, row - 1)).append("\" t=\"inlineStr\"><is><t>");
            cells.append(texts[i]).append("</t></is></c>");
        }
        return "<row r=\"" + row + "\">" + cells + "</row>";
    }

    private static String relationship(String type, String target) {
        return HEAD + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + "<Relationship Id=\"rId1\" Type=\"" + OFFICE + "/" + type + "\" Target=\"" + target + "\"/>"
                + "</Relationships>";
    }
}
