package org.shelterwright.app.cli.verb;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a date as ISO 8601 writes it. */
final class DateText implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeException e) {
            throw new TypeConversionException("\"" + text + "\" is no date. Write year, month and day: 2026-03-01.");
        }
    }
}
