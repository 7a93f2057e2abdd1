package org.shelterwright.app.desk.hand;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;

/** Names for units that are added: the next number that nobody has. */
public final class NewName {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)[ -]?(\\d{1,4})");

    private NewName() {}

    /** Another unit of the same item and group, such as "Rack 3" after "Rack 2". */
    public static UnitSpec after(Brief brief, UnitSpec like) {
        return next(brief, stem(like.id()), stem(like.name()), like.item(), like.group());
    }

    /** The first unit of an item, or the next. */
    public static UnitSpec of(Brief brief, String item, String name, String group) {
        return ids(brief).contains(item) || names(brief).contains(name)
                ? next(brief, item, name, item, group)
                : new UnitSpec(item, name, item, group);
    }

    private static UnitSpec next(Brief brief, String id, String name, String item, String group) {
        Set<String> ids = ids(brief);
        Set<String> names = names(brief);
        int number = 2;
        while (ids.contains(id + "-" + number) || names.contains(name + " " + number)) {
            number++;
        }
        return new UnitSpec(id + "-" + number, name + " " + number, item, group);
    }

    private static String stem(String name) {
        Matcher matcher = NUMBERED.matcher(name);
        return matcher.matches() && !matcher.group(1).isEmpty() ? matcher.group(1) : name;
    }

    private static Set<String> ids(Brief brief) {
        Set<String> ids = new HashSet<>();
        brief.units().forEach(unit -> ids.add(unit.id()));
        var trailer = brief.trailer();
        if (trailer != null) {
            trailer.loads().stream().map(TrailerLoad::unit).forEach(unit -> ids.add(unit.id()));
        }
        return ids;
    }

    private static Set<String> names(Brief brief) {
        Set<String> names = new HashSet<>();
        brief.units().forEach(unit -> names.add(unit.name()));
        return names;
    }
}
