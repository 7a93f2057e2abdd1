package org.shelterwright.catalog.json;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/** Finds how each type stands in files. A closed list: no class is ever named by a file. */
final class Codecs {
    private final Map<Type, Codec<?>> known = new HashMap<>();

    Codecs() {
        known.put(String.class, ScalarCodecs.TEXT);
        known.put(boolean.class, ScalarCodecs.TRUTH);
        known.put(Boolean.class, ScalarCodecs.TRUTH);
        known.put(double.class, ScalarCodecs.REAL);
        known.put(Double.class, ScalarCodecs.REAL);
        known.put(int.class, ScalarCodecs.WHOLE);
        known.put(Integer.class, ScalarCodecs.WHOLE);
        known.put(long.class, ScalarCodecs.LONG);
        known.put(Long.class, ScalarCodecs.LONG);
        known.put(QuarterTurn.class, ScalarCodecs.TURN);
        known.put(Point.class, SpaceCodecs.POINT);
        known.put(Size.class, SpaceCodecs.SIZE);
        known.put(Box.class, SpaceCodecs.BOX);
        known.put(Rect.class, SpaceCodecs.RECT);
    }

    @SuppressWarnings("unchecked")
    Codec<Object> of(RecordComponent component) {
        if (component.isAnnotationPresent(Millimetres.class)) {
            return (Codec<Object>) (Codec<?>) ScalarCodecs.LENGTH;
        }
        if (component.getName().equals("id") && component.getType() == String.class) {
            return (Codec<Object>) (Codec<?>) ScalarCodecs.ID;
        }
        return (Codec<Object>) of(component.getGenericType());
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private Codec<?> of(Type type) {
        Codec<?> there = known.get(type);
        if (there != null) {
            return there;
        }
        Codec<?> made;
        if (type instanceof Class<?> plain && plain.isEnum()) {
            made = new EnumCodec(plain);
        } else if (type instanceof Class<?> plain && plain.isRecord()) {
            made = new RecordCodec<>(plain, this);
        } else if (type instanceof ParameterizedType generic) {
            made = collection(generic);
        } else {
            throw new IllegalArgumentException("The type " + type.getTypeName() + " has no form in files.");
        }
        known.put(type, made);
        return made;
    }

    private Codec<?> collection(ParameterizedType generic) {
        Type[] arguments = generic.getActualTypeArguments();
        Codec<?> element = of(arguments[arguments.length - 1]);
        @Nullable Codec<?> made = null;
        if (generic.getRawType() == List.class) {
            made = CollectionCodecs.list(element);
        } else if (generic.getRawType() == Set.class) {
            made = CollectionCodecs.set(element);
        } else if (generic.getRawType() == Map.class && arguments[0] == String.class) {
            made = CollectionCodecs.map(element);
        }
        if (made == null) {
            throw new IllegalArgumentException("The type " + generic.getTypeName() + " has no form in files.");
        }
        return made;
    }
}
