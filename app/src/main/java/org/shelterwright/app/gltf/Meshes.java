package org.shelterwright.app.gltf;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.view.Block;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * The binary part of a model: positions, normals and indices of boxes, in metres with y up. The axes of a body come to
 * glTF as (x, y, z) → (y, z, x): forward is +z, left is +x, up is +y, and right-handed stays right-handed.
 */
final class Meshes {

    private static final int[][] EDGES = {
        {0, 1}, {1, 2}, {2, 3}, {3, 0}, {4, 5}, {5, 6}, {6, 7}, {7, 4}, {0, 4}, {1, 5}, {2, 6}, {3, 7}
    };

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final List<Accessor> accessors = new ArrayList<>();

    /**
     * A run of values in the binary part.
     *
     * @param least least value of each component; empty for indices
     * @param most greatest value of each component; empty for indices
     */
    record Accessor(int offset, int length, int count, boolean indices, List<Float> least, List<Float> most) {}

    byte[] bytes() {
        return bytes.toByteArray();
    }

    List<Accessor> accessors() {
        return accessors;
    }

    /** Adds the faces of boxes; gives the numbers of the accessors of positions, normals and indices. */
    int[] faces(List<Box> boxes) {
        List<float[]> positions = new ArrayList<>();
        List<float[]> normals = new ArrayList<>();
        List<Integer> indices = new ArrayList<>();
        for (Box box : boxes) {
            for (Face face : Face.values()) {
                int first = positions.size();
                List<Point> corners = Block.corners(box, face);
                corners.forEach(corner -> {
                    positions.add(metres(corner));
                    normals.add(normal(face));
                });
                int[] order = anticlockwise(face) ? new int[] {0, 1, 2, 0, 2, 3} : new int[] {0, 2, 1, 0, 3, 2};
                for (int corner : order) {
                    indices.add(first + corner);
                }
            }
        }
        return new int[] {vectors(positions), vectors(normals), indices(indices)};
    }

    /** Adds the edges of boxes; gives the numbers of the accessors of positions and indices. */
    int[] edges(List<Box> boxes) {
        List<float[]> positions = new ArrayList<>();
        List<Integer> indices = new ArrayList<>();
        for (Box box : boxes) {
            int first = positions.size();
            Block.corners(box).forEach(corner -> positions.add(metres(corner)));
            for (int[] edge : EDGES) {
                indices.add(first + edge[0]);
                indices.add(first + edge[1]);
            }
        }
        return new int[] {vectors(positions), indices(indices)};
    }

    /** Whether the corners of a face, as {@link Block#corners} gives them, run anticlockwise when seen from outside. */
    private static boolean anticlockwise(Face face) {
        boolean positive = face.sign() > 0;
        return switch (face.axis()) {
            case X, Z -> positive;
            case Y -> !positive;
        };
    }

    private static float[] metres(Point p) {
        return new float[] {(float) Lengths.metres(p.y()), (float) Lengths.metres(p.z()), (float) Lengths.metres(p.x())
        };
    }

    private static float[] normal(Face face) {
        return switch (face.axis()) {
            case X -> new float[] {0, 0, face.sign()};
            case Y -> new float[] {face.sign(), 0, 0};
            case Z -> new float[] {0, face.sign(), 0};
        };
    }

    private int vectors(List<float[]> vectors) {
        ByteBuffer buffer = ByteBuffer.allocate(vectors.size() * 12).order(ByteOrder.LITTLE_ENDIAN);
        float[] least = {Float.MAX_VALUE, Float.MAX_VALUE, Float.MAX_VALUE};
        float[] most = {-Float.MAX_VALUE, -Float.MAX_VALUE, -Float.MAX_VALUE};
        for (float[] vector : vectors) {
            for (int i = 0; i < 3; i++) {
                buffer.putFloat(vector[i]);
                least[i] = Math.min(least[i], vector[i]);
                most[i] = Math.max(most[i], vector[i]);
            }
        }
        return add(buffer, vectors.size(), false, list(least), list(most));
    }

    private int indices(List<Integer> indices) {
        ByteBuffer buffer = ByteBuffer.allocate(indices.size() * 4).order(ByteOrder.LITTLE_ENDIAN);
        indices.forEach(buffer::putInt);
        return add(buffer, indices.size(), true, List.of(), List.of());
    }

    private int add(ByteBuffer buffer, int count, boolean indices, List<Float> least, List<Float> most) {
        accessors.add(new Accessor(bytes.size(), buffer.capacity(), count, indices, least, most));
        bytes.writeBytes(buffer.array());
        return accessors.size() - 1;
    }

    private static List<Float> list(float[] values) {
        return List.of(values[0], values[1], values[2]);
    }
}
