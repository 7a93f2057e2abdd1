package org.shelterwright.app.cli.verb;

import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.ledger.Subject;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Names of subjects as they are typed: lower case with hyphens. */
final class SubjectName implements ITypeConverter<Subject>, Iterable<String> {
    @Override
    public Subject convert(String name) {
        return Arrays.stream(Subject.values())
                .filter(subject -> typed(subject).equals(name.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException(
                        "\"" + name + "\" is no subject." + NearestName.hint(name, names())));
    }

    @Override
    public Iterator<String> iterator() {
        return names().iterator();
    }

    private static List<String> names() {
        return Arrays.stream(Subject.values()).map(SubjectName::typed).toList();
    }

    private static String typed(Subject subject) {
        return subject.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
