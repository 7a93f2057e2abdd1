package org.shelterwright.app.cli.verb;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time as it is typed: a number with s, m or h; without a unit, seconds. */
final class TimeText implements ITypeConverter<Duration> {
    private static final Pattern TEXT = Pattern.compile("(\\d{1,7}(?:[.,]\\d{1,3})?)\\s*([smh]?)");

    @Override
    public Duration convert(String text) {
        Matcher matcher = TEXT.matcher(text.strip());
        if (!matcher.matches()) {
            throw refused(text);
        }
        int seconds = switch (matcher.group(2)) {
            case "m" -> 60;
            case "h" -> 3600;
            default -> 1;
        };
        BigDecimal number = new BigDecimal(matcher.group(1).replace(',', '.'));
        Duration time = Duration.ofMillis(
                number.movePointRight(3).multiply(BigDecimal.valueOf(seconds)).longValueExact());
        if (time.isZero()) {
            throw refused(text);
        }
        return time;
    }

    private static TypeConversionException refused(String text) {
        return new TypeConversionException(
                "\"" + text + "\" is no time. Give a number above zero with s, m or h, such as 90s or 2m.");
    }
}
