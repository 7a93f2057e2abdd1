package org.shelterwright.layouts.transport;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Face;

/**
 * What a piece leans on at the floor.
 *
 * @param what piece
 * @param way how it is blocked
 * @param toward the directions that it may not move in: front, rear, left, right
 * @param count chocks or beams in each of these directions
 * @param eachN what one beam bears (N); of chocks, stops and spigots the car says it
 */
public record Block(
        String what,
        Way way,
        List<Face> toward,
        int count,
        @Nullable Double eachN) {
    /** How a piece is blocked. */
    public enum Way {
        CHOCKS("chocks"),
        BEAMS("beams"),
        STOP("end or side of the car"),
        SPIGOTS("spigots");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Block {
        toward = List.copyOf(toward);
        Figures.within("number of blocks", count, 1, 100);
        for (Face face : toward) {
            if (!face.upright()) {
                throw new IllegalArgumentException("A block acts toward front, rear, left or right.");
            }
        }
        if (eachN != null) {
            Figures.positive("strength of a block (N)", eachN);
        }
    }
}
