package org.shelterwright.app.tables;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes a table as CSV after RFC 4180, in UTF-8, with a decimal point and without gaps between thousands. */
public final class Csv {

    private static final String END = "\r\n";

    private Csv() {}

    /** The file. Equal tables give equal bytes. */
    public static byte[] write(Table table) {
        StringBuilder text = new StringBuilder();
        text.append(table.columns().stream().map(Csv::cell).collect(Collectors.joining(",")))
                .append(END);
        for (List<@Nullable Object> row : table.rows()) {
            text.append(row.stream().map(Csv::cell).collect(Collectors.joining(",")))
                    .append(END);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String cell(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Number number) {
            return new BigDecimal(number.toString()).toPlainString();
        }
        String text = Guard.text((String) value);
        boolean quoted = text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quoted ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
