package org.shelterwright.app.desk.file;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/**
 * Unsaved work of a window that ended without saving or asking.
 *
 * @param at when it was kept
 * @param differences in how many things it differs from the file
 */
public record Recovery<T>(T content, Instant at, int differences) {
    /** What is offered. */
    public String sentence(ZoneId zone, LocalDate today) {
        return "The window was not closed properly. Unsaved work was kept (" + when(at, zone, today)
                + "). It differs from the file in " + (differences == 1 ? "1 thing." : differences + " things.");
    }

    /** A time as people say it: "today, 14:02", "2026-03-01, 14:02". */
    static String when(Instant at, ZoneId zone, LocalDate today) {
        LocalDateTime time = LocalDateTime.ofInstant(at, zone);
        return (time.toLocalDate().equals(today) ? "today, " : time.toLocalDate() + ", ")
                + time.format(DateTimeFormatter.ofPattern("HH:mm"));
    }
}
