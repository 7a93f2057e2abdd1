package org.shelterwright.solver.route.drop;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Box;

/** {@link Surroundings} as arrays of low and high corners, for loops over them. Not to be changed. */
public record Obstacles(Box room, int[][] solids, int[][] zones, int[][] shunned) {
    public static Obstacles of(Surroundings about) {
        return new Obstacles(about.room(), flat(about.solids()), flat(about.zones()), flat(about.shunned()));
    }

    /** Those that overlap or touch a part of the room, in their order. */
    static int[][] near(int[][] boxes, Box part) {
        List<int[]> found = new ArrayList<>();
        for (int[] s : boxes) {
            if (s[0] <= part.x1()
                    && part.x0() <= s[3]
                    && s[1] <= part.y1()
                    && part.y0() <= s[4]
                    && s[2] <= part.z1()
                    && part.z0() <= s[5]) {
                found.add(s);
            }
        }
        return found.toArray(int[][]::new);
    }

    private static int[][] flat(List<Box> boxes) {
        int[][] flat = new int[boxes.size()][];
        for (int i = 0; i < flat.length; i++) {
            Box box = boxes.get(i);
            flat[i] = new int[] {box.x0(), box.y0(), box.z0(), box.x1(), box.y1(), box.z1()};
        }
        return flat;
    }
}
