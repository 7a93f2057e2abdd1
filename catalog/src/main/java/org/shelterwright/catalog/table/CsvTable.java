package org.shelterwright.catalog.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * Reads comma-separated text after RFC 4180, also with semicolons or tabs. The separator is the one of the three that the
 * first filled line has most of, outside quotes. Text is UTF-8, or UTF-16 with a byte order mark.
 */
final class CsvTable {
    private static final char[] SEPARATORS = {',', ';', '\t'};

    private CsvTable() {}

    /**
     * @throws InputException if the bytes are no text, the quoting is broken or a bound is exceeded
     */
    static Table read(InputFile file) {
        String text = text(file);
        char separator = separator(text);
        List<Table.Line> rows = new ArrayList<>();
        CsvMapper mapper =
                CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator);
        try (MappingIterator<String[]> records =
                mapper.readerFor(String[].class).with(schema).readValues(text)) {
            for (int row = 0; records.hasNextValue(); row++) {
                Table.Line line = new Table.Line(row, cells(row, records.nextValue()));
                if (!line.cells().isEmpty()) {
                    Table.requireWithinBounds(file.name(), rows.size(), line);
                    rows.add(line);
                }
            }
        } catch (JacksonException e) {
            String place =
                    e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
            throw new InputException(
                    file.name() + place,
                    "The comma-separated text is broken (" + e.getOriginalMessage()
                            + "). Check the quotation marks around here.");
        }
        return new Table(
                file.name(),
                rows,
                List.of(new ImportNote(
                        "A1", ImportNote.Kind.READ_AS, "The fields are separated by " + name(separator) + ".")));
    }

    private static List<Cell> cells(int row, String[] fields) {
        List<Cell> cells = new ArrayList<>();
        for (int column = 0; column < fields.length; column++) {
            if (fields[column] != null && !fields[column].isBlank()) {
                cells.add(new Cell(column, row, fields[column], Cell.Kind.TEXT));
            }
        }
        return cells;
    }

    private static String text(InputFile file) {
        byte[] bytes = file.bytes();
        Charset charset = StandardCharsets.UTF_8;
        if (bytes.length >= 2 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xFE) {
            charset = StandardCharsets.UTF_16LE;
        } else if (bytes.length >= 2 && (bytes[0] & 0xFF) == 0xFE && (bytes[1] & 0xFF) == 0xFF) {
            charset = StandardCharsets.UTF_16BE;
        }
        String text;
        try {
            text = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new InputException(
                    file.name(), "The file is no text in UTF-8. Save the table as CSV in UTF-8, or as XLSX.");
        }
        if (text.indexOf('\0') >= 0) {
            throw new InputException(
                    file.name(),
                    "The file is no text: it holds zero bytes. Save the table as CSV in UTF-8, or as XLSX.");
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static char separator(String text) {
        int[] counts = new int[SEPARATORS.length];
        boolean quoted = false;
        boolean filled = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            }
            if (!quoted && filled && (c == '\n' || c == '\r')) {
                break;
            }
            filled |= !Character.isWhitespace(c);
            for (int s = 0; s < counts.length; s++) {
                counts[s] += !quoted && c == SEPARATORS[s] ? 1 : 0;
            }
        }
        int best = 0;
        for (int s = 1; s < counts.length; s++) {
            best = counts[s] > counts[best] ? s : best;
        }
        return SEPARATORS[best];
    }

    private static String name(char separator) {
        return separator == '\t' ? "tabs" : separator == ';' ? "semicolons" : "commas";
    }
}
