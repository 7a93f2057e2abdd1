package org.shelterwright.app.cli.verb;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.study.ItemChange;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** An item that comes otherwise, as it is typed: {@code battery-box-24v:deeper=40,heavier=12}. */
final class ItemChangeText implements ITypeConverter<ItemChange> {
    @Override
    public ItemChange convert(String text) {
        int colon = text.indexOf(':');
        if (colon < 1) {
            throw wrong(text);
        }
        Integer deeper = null;
        Integer wider = null;
        Integer taller = null;
        Double heavier = null;
        for (String part : text.substring(colon + 1).split(",")) {
            String[] sides = part.split("=", 2);
            if (sides.length != 2) {
                throw wrong(text);
            }
            switch (sides[0]) {
                case "deeper" -> deeper = length(text, sides[1]);
                case "wider" -> wider = length(text, sides[1]);
                case "taller" -> taller = length(text, sides[1]);
                case "heavier" -> heavier = number(text, sides[1]);
                default -> throw wrong(text);
            }
        }
        try {
            return new ItemChange(text.substring(0, colon), deeper, wider, taller, heavier);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }

    private static Integer length(String text, String value) {
        try {
            return Lengths.parse(value);
        } catch (IllegalArgumentException e) {
            throw wrong(text);
        }
    }

    private static @Nullable Double number(String text, String value) {
        try {
            return Double.valueOf(value);
        } catch (NumberFormatException e) {
            throw wrong(text);
        }
    }

    private static TypeConversionException wrong(String text) {
        return new TypeConversionException(
                "\"" + text
                        + "\" is not understood; write an item and what changes (mm, kg): battery-box-24v:deeper=40,heavier=12");
    }
}
