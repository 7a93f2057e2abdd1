package org.shelterwright.solver.fit.planted;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Shortens the pieces of a bank, in whole steps and each by about the same share, until a share of its area is free. */
final class Shortening {
    private Shortening() {}

    /**
     * Shortens pieces along the wall.
     *
     * @param area area of the bank (mm²)
     * @param slack share of the area that shall be free; at least this, and less than one step of one piece more
     */
    static List<Cuts.Piece> of(List<Cuts.Piece> pieces, long area, double slack) {
        long filled = pieces.stream().mapToLong(Cuts.Piece::area).sum();
        long goal = Math.round(area * (1 - slack));
        if (goal > filled) {
            throw new IllegalArgumentException("The pieces already leave more free than the slack of " + slack + ".");
        }
        int[] lengths = new int[pieces.size()];
        double[] lost = new double[pieces.size()];
        long used = 0;
        for (int i = 0; i < lengths.length; i++) {
            double share = (double) pieces.get(i).length() * goal / filled;
            lengths[i] = Math.max(1, (int) (share / Cuts.STEP)) * Cuts.STEP;
            lost[i] = share - lengths[i];
            used += (long) lengths[i] * pieces.get(i).height();
        }
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, lengths.length).boxed().toList());
        order.sort(Comparator.comparingDouble(i -> -lost[i]));
        for (int i : order) {
            Cuts.Piece piece = pieces.get(i);
            long more = (long) Cuts.STEP * piece.height();
            if (used + more <= goal && lengths[i] + Cuts.STEP <= piece.length()) {
                lengths[i] += Cuts.STEP;
                used += more;
            }
        }
        List<Cuts.Piece> shortened = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            Cuts.Piece piece = pieces.get(i);
            shortened.add(new Cuts.Piece(piece.x0(), piece.z0(), piece.x0() + lengths[i], piece.z1()));
        }
        return shortened;
    }
}
