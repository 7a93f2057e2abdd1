package org.shelterwright.catalog.json;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;

/** Points, sizes, cuboids and rectangles in files: lists of lengths, and pairs of corners. */
final class SpaceCodecs {
    static final Codec<Point> POINT =
            list("[x, y, z]", 3, v -> new Point(v[0], v[1], v[2]), p -> new int[] {p.x(), p.y(), p.z()});
    static final Codec<Size> SIZE =
            list("[x, y, z]", 3, v -> new Size(v[0], v[1], v[2]), s -> new int[] {s.x(), s.y(), s.z()});
    static final Codec<Box> BOX = corners("[x, y, z]", 3, v -> new Box(v[0], v[1], v[2], v[3], v[4], v[5]), b ->
            new int[] {b.x0(), b.y0(), b.z0(), b.x1(), b.y1(), b.z1()});
    static final Codec<Rect> RECT = corners(
            "[x, y]", 2, v -> new Rect(v[0], v[1], v[2], v[3]), r -> new int[] {r.x0(), r.y0(), r.x1(), r.y1()});

    private SpaceCodecs() {}

    private static <T> Codec<T> list(String shape, int count, Function<int[], T> make, Function<T, int[]> take) {
        return new Codec<>() {
            @Override
            public @Nullable T read(Node node, Trail trail) {
                int[] values = lengths(shape, count, node, trail);
                return values == null ? null : made(make, values, node, trail);
            }

            @Override
            public Node write(T value) {
                return lengths(take.apply(value));
            }
        };
    }

    private static <T> Codec<T> corners(String shape, int count, Function<int[], T> make, Function<T, int[]> take) {
        return new Codec<>() {
            private final List<String> keys = List.of("from", "to");

            @Override
            public @Nullable T read(Node node, Trail trail) {
                if (!(node instanceof Node.ObjectNode object)) {
                    trail.mismatch(node, "an object {\"from\": " + shape + ", \"to\": " + shape + "}");
                    return null;
                }
                Keys.tellUnknown(object, keys, trail);
                int[] from = corner(object, "from", trail);
                int[] to = corner(object, "to", trail);
                if (from == null || to == null) {
                    return null;
                }
                int[] values = Arrays.copyOf(from, 2 * count);
                System.arraycopy(to, 0, values, count, count);
                return made(make, values, node, trail);
            }

            private int @Nullable [] corner(Node.ObjectNode object, String key, Trail trail) {
                Node node = object.get(key).orElse(null);
                if (node == null) {
                    Keys.tellMissing(object, key, trail);
                    return null;
                }
                return lengths(shape, count, node, trail.key(key));
            }

            @Override
            public Node write(T value) {
                int[] values = take.apply(value);
                return new Node.ObjectNode(
                        null,
                        List.of(
                                new Node.Member("from", null, lengths(Arrays.copyOf(values, count))),
                                new Node.Member("to", null, lengths(Arrays.copyOfRange(values, count, 2 * count)))));
            }
        };
    }

    private static int @Nullable [] lengths(String shape, int count, Node node, Trail trail) {
        if (!(node instanceof Node.ArrayNode array) || array.elements().size() != count) {
            String shown = node instanceof Node.ArrayNode array
                    ? "a list of " + array.elements().size()
                    : node.shown();
            trail.tell(
                    node.spot(),
                    trail.here() + " must be a list of " + count + " lengths " + shape + " in millimetres, but is "
                            + shown + ".");
            return null;
        }
        int[] values = new int[count];
        boolean whole = true;
        for (int i = 0; i < count; i++) {
            Integer value = ScalarCodecs.LENGTH.read(array.elements().get(i), trail.index(i));
            whole &= value != null;
            values[i] = value == null ? 0 : value;
        }
        return whole ? values : null;
    }

    private static Node lengths(int[] values) {
        return new Node.ArrayNode(
                null, Arrays.stream(values).mapToObj(ScalarCodecs.LENGTH::write).toList());
    }

    private static <T> @Nullable T made(Function<int[], T> make, int[] values, Node node, Trail trail) {
        try {
            return make.apply(values);
        } catch (IllegalArgumentException e) {
            trail.tell(node.spot(), trail.here() + ": " + e.getMessage());
            return null;
        }
    }
}
