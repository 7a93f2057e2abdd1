package org.shelterwright.app.desk.item;

import java.util.Locale;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.catalog.item.ClearZone;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/** A part of an item as it is typed: one of several that are alike. */
public sealed interface Line {
    String name();

    /** Something that fills space, or keeps it free, from one corner to another. */
    sealed interface Cuboid<S extends Cuboid<S>> extends Line {
        String from();

        String to();

        S with(String newName, String newFrom, String newTo);
    }

    /** A part of what the item fills. */
    record Filled(String name, String from, String to, Presence presence) implements Cuboid<Filled> {
        static Filled of(Solid solid) {
            return new Filled(
                    solid.name(), corner(solid.box().low()), corner(solid.box().high()), solid.presence());
        }

        @Override
        public Filled with(String newName, String newFrom, String newTo) {
            return new Filled(newName, newFrom, newTo, presence);
        }
    }

    /** A clear zone. */
    record Kept(String name, Purpose purpose, String from, String to, Presence presence) implements Cuboid<Kept> {
        static Kept of(ClearZone zone) {
            Box box = zone.box();
            return new Kept(zone.name(), zone.purpose(), corner(box.low()), corner(box.high()), zone.presence());
        }

        @Override
        public Kept with(String newName, String newFrom, String newTo) {
            return new Kept(newName, purpose, newFrom, newTo, presence);
        }

        Kept with(Purpose other) {
            return new Kept(name, other, from, to, presence);
        }
    }

    /** A fixing; what the form does not show of it is kept from the one that it was. */
    record Bolt(String name, String at, Face face, String thread, String grade) implements Line {
        static Bolt of(Fixing fixing) {
            String grade = fixing.grade();
            return new Bolt(
                    fixing.name(), corner(fixing.at()), fixing.face(), fixing.thread(), grade == null ? "" : grade);
        }
    }

    /** A place as it is typed: three lengths with spaces between them (mm). */
    static String corner(Point point) {
        return LengthUnit.MILLIMETRE.format(point.x()) + " " + LengthUnit.MILLIMETRE.format(point.y()) + " "
                + LengthUnit.MILLIMETRE.format(point.z());
    }

    /** A constant in words, such as "on the road". */
    static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
