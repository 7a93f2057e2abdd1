package org.shelterwright.catalog.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A record in files: an object with the names of its components as keys, in their order. Components that may be null,
 * collections, truth values, and records all of whose components may be left out, may be left out themselves.
 */
final class RecordCodec<T> implements Codec<T> {
    private final List<Part> parts;
    private final List<String> keys;
    private final Constructor<T> constructor;
    private final @Nullable T absent;

    private record Part(String key, boolean nullable, Codec<Object> codec, Method accessor) {
        boolean optional() {
            return nullable || codec.whenAbsent() != null;
        }
    }

    RecordCodec(Class<T> type, Codecs codecs) {
        List<Part> found = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            found.add(new Part(
                    component.getName(),
                    component.getAnnotatedType().isAnnotationPresent(Nullable.class),
                    codecs.of(component),
                    component.getAccessor()));
        }
        this.parts = List.copyOf(found);
        this.keys = parts.stream().map(Part::key).toList();
        this.constructor = canonical(type);
        this.absent = empty();
    }

    private static <T> Constructor<T> canonical(Class<T> type) {
        try {
            Constructor<T> constructor = type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getType)
                    .toArray(Class<?>[]::new));
            if (!constructor.canAccess(null)) {
                throw new IllegalArgumentException(
                        "The record " + type.getName() + " must be public to stand in files.");
            }
            return constructor;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("Every record has a canonical constructor.", e);
        }
    }

    @Override
    public @Nullable T read(Node node, Trail trail) {
        if (!(node instanceof Node.ObjectNode object)) {
            trail.mismatch(node, "an object in braces");
            return null;
        }
        Keys.tellUnknown(object, keys, trail);
        @Nullable Object[] values = new @Nullable Object[parts.size()];
        boolean whole = true;
        for (int i = 0; i < values.length; i++) {
            Part part = parts.get(i);
            Node given = object.get(part.key()).orElse(null);
            if (given == null) {
                values[i] = part.nullable() ? null : part.codec().whenAbsent();
                if (!part.optional()) {
                    Keys.tellMissing(object, part.key(), trail);
                    whole = false;
                }
            } else if (!(part.nullable() && given instanceof Node.NullNode)) {
                values[i] = part.codec().read(given, trail.key(part.key()));
                whole &= values[i] != null;
            }
        }
        return whole ? made(values, object, trail) : null;
    }

    private @Nullable T made(@Nullable Object[] values, Node.ObjectNode object, Trail trail) {
        try {
            return construct(values);
        } catch (IllegalArgumentException e) {
            String sentence = String.valueOf(e.getMessage());
            trail.tell(object.spot(), trail.isRoot() ? sentence : trail.here() + ": " + sentence);
            return null;
        }
    }

    private T construct(@Nullable Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw unchecked(e);
        }
    }

    /** What a record itself has thrown. */
    private static RuntimeException unchecked(ReflectiveOperationException e) {
        Throwable thrown = e instanceof InvocationTargetException ? e.getCause() : e;
        if (thrown instanceof RuntimeException own) {
            return own;
        }
        if (thrown instanceof Error error) {
            throw error;
        }
        return new IllegalStateException("A record could not be made or read.", thrown);
    }

    @Override
    public Node.ObjectNode write(T value) {
        List<Node.Member> members = new ArrayList<>();
        for (Part part : parts) {
            Object content = content(part, value);
            if (content == null
                    || !part.nullable() && content.equals(part.codec().whenAbsent())) {
                continue;
            }
            members.add(new Node.Member(part.key(), null, part.codec().write(content)));
        }
        return new Node.ObjectNode(null, List.copyOf(members));
    }

    private static @Nullable Object content(Part part, Object value) {
        try {
            return part.accessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw unchecked(e);
        }
    }

    @Override
    public @Nullable T whenAbsent() {
        return absent;
    }

    /** The record with everything left out, or {@code null} if that is not enough for it. */
    private @Nullable T empty() {
        if (!parts.stream().allMatch(Part::optional)) {
            return null;
        }
        try {
            return construct(parts.stream()
                    .map(part -> part.nullable() ? null : part.codec().whenAbsent())
                    .toArray());
        } catch (IllegalArgumentException e) {
            return null;
        }
    }
}
