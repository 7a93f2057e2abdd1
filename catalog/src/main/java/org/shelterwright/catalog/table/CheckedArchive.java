package org.shelterwright.catalog.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;

/**
 * Unpacks a workbook within bounds and packs its parts anew, so that what is read later is what was checked here: never
 * more than the bounds in memory, no document types or entities, no cell address that asks for millions of columns.
 */
final class CheckedArchive {
    /** Most parts of a workbook. */
    static final int MOST_PARTS = 2_000;
    /** Most bytes of all parts, unpacked. */
    static final int LARGEST = 60_000_000;

    private static final Pattern DOCUMENT_TYPE = Pattern.compile("<!\\s*(?:DOCTYPE|ENTITY)", Pattern.CASE_INSENSITIVE);
    private static final Pattern FAR_ADDRESS =
            Pattern.compile("\\sr\\s*=\\s*[\"'](?:\\s*[A-Za-z]{4}|[^\"'&<>]{0,20}&)");

    private CheckedArchive() {}

    /**
     * Gives the same archive with checked parts.
     *
     * @throws InputException if it is broken or beyond a bound
     */
    static byte[] of(InputFile file) {
        ByteArrayOutputStream copy = new ByteArrayOutputStream();
        int left = LARGEST;
        int parts = 0;
        try (ZipFile in = ZipFile.builder()
                        .setSeekableByteChannel(new SeekableInMemoryByteChannel(file.bytes()))
                        .get();
                ZipOutputStream out = new ZipOutputStream(copy)) {
            out.setLevel(1);
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                byte[] part = unpacked(in, entry, left + 1);
                if (part.length > left || ++parts > MOST_PARTS) {
                    throw new InputException(
                            file.name(),
                            "The workbook unpacks to more than " + LARGEST / 1_000_000 + " MB or " + MOST_PARTS
                                    + " parts. Save only the sheet with the equipment list.");
                }
                left -= part.length;
                if (isText(entry.getName())) {
                    requireHarmless(file.name(), entry.getName(), part);
                }
                out.putNextEntry(new ZipEntry(entry.getName()));
                out.write(part);
                out.closeEntry();
            }
        } catch (IOException | IllegalArgumentException | ArithmeticException e) {
            throw new InputException(
                    file.name(), "The workbook is broken (" + e.getMessage() + "). Open it and save it again as XLSX.");
        }
        if (parts == 0) {
            throw new InputException(file.name(), "The workbook is empty. Open it and save it again as XLSX.");
        }
        return copy.toByteArray();
    }

    private static byte[] unpacked(ZipFile archive, ZipArchiveEntry entry, int most) throws IOException {
        try (InputStream in = archive.getInputStream(entry)) {
            return in.readNBytes(most);
        }
    }

    private static boolean isText(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(".xml") || lower.endsWith(".rels");
    }

    private static void requireHarmless(String file, String part, byte[] bytes) {
        if (bytes.length > 1 && (bytes[0] == 0 || bytes[1] == 0 || (bytes[0] & 0xFF) >= 0xFE)) {
            throw new InputException(
                    file, "The part " + part + " of the workbook is not in UTF-8. Open it and save it again as XLSX.");
        }
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        if (DOCUMENT_TYPE.matcher(text).find()) {
            throw new InputException(
                    file,
                    "The part " + part + " of the workbook declares a document type or entity, which is never read."
                            + " Open it and save it again as XLSX.");
        }
        if (FAR_ADDRESS.matcher(text).find()) {
            throw new InputException(
                    file,
                    "The part " + part + " of the workbook has a cell address beyond the last column of a sheet."
                            + " Open it and save it again as XLSX.");
        }
    }
}
