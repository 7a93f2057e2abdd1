package org.shelterwright.catalog.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Lists, sets and maps in files; what is left out is empty. */
final class CollectionCodecs {
    private CollectionCodecs() {}

    static <T> Codec<List<T>> list(Codec<T> element) {
        return new Codec<>() {
            @Override
            public @Nullable List<T> read(Node node, Trail trail) {
                return elements(element, node, trail);
            }

            @Override
            public Node write(List<T> value) {
                return new Node.ArrayNode(
                        null, value.stream().map(element::write).toList());
            }

            @Override
            public List<T> whenAbsent() {
                return List.of();
            }
        };
    }

    /** Sets are written in their natural order, since a set has none of its own. */
    static <T> Codec<Set<T>> set(Codec<T> element) {
        return new Codec<>() {
            @Override
            public @Nullable Set<T> read(Node node, Trail trail) {
                List<T> elements = elements(element, node, trail);
                return elements == null ? null : new LinkedHashSet<>(elements);
            }

            @Override
            public Node write(Set<T> value) {
                return new Node.ArrayNode(
                        null, value.stream().sorted().map(element::write).toList());
            }

            @Override
            public Set<T> whenAbsent() {
                return Set.of();
            }
        };
    }

    static <T> Codec<Map<String, T>> map(Codec<T> element) {
        return new Codec<>() {
            @Override
            public @Nullable Map<String, T> read(Node node, Trail trail) {
                if (!(node instanceof Node.ObjectNode object)) {
                    trail.mismatch(node, "an object in braces");
                    return null;
                }
                Map<String, T> values = new LinkedHashMap<>();
                for (Node.Member member : object.members()) {
                    T value = element.read(member.value(), trail.key(member.key()));
                    if (value != null) {
                        values.put(member.key(), value);
                    }
                }
                return values.size() == object.members().size() ? values : null;
            }

            @Override
            public Node write(Map<String, T> value) {
                return new Node.ObjectNode(
                        null,
                        value.entrySet().stream()
                                .map(entry -> new Node.Member(entry.getKey(), null, element.write(entry.getValue())))
                                .toList());
            }

            @Override
            public Map<String, T> whenAbsent() {
                return Map.of();
            }
        };
    }

    private static <T> @Nullable List<T> elements(Codec<T> element, Node node, Trail trail) {
        if (!(node instanceof Node.ArrayNode array)) {
            trail.mismatch(node, "a list in brackets");
            return null;
        }
        List<T> values = new ArrayList<>();
        for (int i = 0; i < array.elements().size(); i++) {
            T value = element.read(array.elements().get(i), trail.index(i));
            if (value != null) {
                values.add(value);
            }
        }
        return values.size() == array.elements().size() ? values : null;
    }
}
