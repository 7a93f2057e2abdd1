package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/** Cuts one bank along a wall, length by height, again and again into the wanted number of pieces. Whole 25 mm steps. */
final class Cuts {
    static final int STEP = 25;
    private static final int LEAST_LENGTH = 250;
    private static final int LEAST_HEIGHT = 300;

    /** A piece of a bank (mm): from x0 to x1 along the wall, from z0 to z1 in height. */
    record Piece(int x0, int z0, int x1, int z1) {
        int length() {
            return x1 - x0;
        }

        int height() {
            return z1 - z0;
        }

        long area() {
            return (long) length() * height();
        }
    }

    private Cuts() {}

    static List<Piece> of(int length, int height, int count, SplittableRandom random) {
        List<Piece> pieces = new ArrayList<>(List.of(new Piece(0, 0, length, height)));
        while (pieces.size() < count) {
            Piece largest = pieces.stream()
                    .max(Comparator.comparingLong(Piece::area).thenComparingInt(Piece::x0))
                    .orElseThrow();
            pieces.remove(largest);
            pieces.addAll(cut(largest, random));
        }
        return pieces;
    }

    private static List<Piece> cut(Piece piece, SplittableRandom random) {
        boolean canStack = piece.height() >= 2 * LEAST_HEIGHT + STEP;
        boolean stack = canStack && (piece.length() < 2 * LEAST_LENGTH || piece.length() < 1.2 * piece.height());
        if (stack) {
            int at = piece.z0() + within(piece.height(), LEAST_HEIGHT, random);
            return List.of(
                    new Piece(piece.x0(), piece.z0(), piece.x1(), at),
                    new Piece(piece.x0(), at, piece.x1(), piece.z1()));
        }
        int at = piece.x0() + within(piece.length(), Math.min(LEAST_LENGTH, piece.length() / 2), random);
        return List.of(
                new Piece(piece.x0(), piece.z0(), at, piece.z1()), new Piece(at, piece.z0(), piece.x1(), piece.z1()));
    }

    private static int within(int length, int least, SplittableRandom random) {
        int share = (int) (length * (0.3 + 0.4 * random.nextDouble()));
        return Math.max(least, Math.min(length - least, share)) / STEP * STEP;
    }
}
