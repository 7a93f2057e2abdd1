package org.shelterwright.catalog.json;

import java.lang.reflect.Method;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The constants of an enum in files: their {@code id()} where the enum gives stable ids, otherwise their name in lower
 * case with hyphens, such as {@code on-the-road}.
 */
final class EnumCodec<E extends Enum<E>> implements Codec<E> {
    private final Map<String, E> constants = new LinkedHashMap<>();

    EnumCodec(Class<E> type) {
        for (E constant : type.getEnumConstants()) {
            constants.put(name(constant), constant);
        }
    }

    @Override
    public @Nullable E read(Node node, Trail trail) {
        if (!(node instanceof Node.TextNode text)) {
            trail.mismatch(node, "one of " + String.join(", ", constants.keySet()));
            return null;
        }
        E constant = constants.get(text.text());
        if (constant == null) {
            trail.tell(
                    node.spot(),
                    trail.here() + " has the value " + node.shown() + ", which is not known."
                            + NearestName.hint(text.text(), constants.keySet()));
        }
        return constant;
    }

    @Override
    public Node write(E value) {
        return new Node.TextNode(null, name(value));
    }

    private static String name(Enum<?> constant) {
        try {
            Method id = constant.getDeclaringClass().getMethod("id");
            if (id.invoke(constant) instanceof String stable) {
                return stable;
            }
        } catch (NoSuchMethodException e) {
            // The usual case: an enum without ids of its own.
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("The id of " + constant + " cannot be read.", e);
        }
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
