package org.shelterwright.layouts;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.transport.SampleJourney;

/**
 * A record with one part put in place of another keeps all its other parts: {@code a.withB(a.b())} equals a, for every record that the
 * catalog and the samples hold.
 */
class CopiesKeepTheRestTest {
    private final Map<String, Integer> asked = new TreeMap<>();

    @Test
    void aCopyWithItsOwnPartIsEqual() throws ReflectiveOperationException {
        Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Object> open = new ArrayDeque<>();
        open.add(LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
        open.add(LayoutFiles.read(Samples.layout("water-lab").orElseThrow()).layout());
        open.add(SampleJourney.loaded().journey());
        open.add(BuiltInCatalog.entries());
        while (!open.isEmpty()) {
            Object one = open.remove();
            if (one instanceof Collection<?> many) {
                open.addAll(many);
            } else if (one instanceof Map<?, ?> map) {
                open.addAll(map.values());
            } else if (one instanceof Record record && seen.add(record)) {
                for (RecordComponent component : record.getClass().getRecordComponents()) {
                    Object part = part(record, component);
                    ask(record, component, part);
                    if (part != null) {
                        open.add(part);
                    }
                }
            }
        }
        assertThat(asked)
                .containsKeys("Brief.withBody", "Layout.withPlacements", "Journey.withLoads", "Leg.withLoads")
                .hasSizeGreaterThan(30);
    }

    private static @Nullable Object part(Record record, RecordComponent component) throws ReflectiveOperationException {
        Method accessor = component.getAccessor();
        accessor.setAccessible(true);
        return accessor.invoke(record);
    }

    private void ask(Record record, RecordComponent component, @Nullable Object part)
            throws ReflectiveOperationException {
        String name = component.getName();
        String with = "with" + name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
        for (Method method : record.getClass().getDeclaredMethods()) {
            if (method.getName().equals(with)
                    && Arrays.equals(method.getParameterTypes(), new Class<?>[] {component.getType()})) {
                method.setAccessible(true);
                asked.merge(record.getClass().getSimpleName() + "." + with, 1, Integer::sum);
                assertThat(method.invoke(record, part))
                        .as(with + " of " + record)
                        .isEqualTo(record);
            }
        }
    }
}
