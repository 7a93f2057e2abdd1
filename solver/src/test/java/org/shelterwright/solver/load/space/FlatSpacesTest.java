package org.shelterwright.solver.load.space;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.kernel.Dice;

/** The list of flat rectangles against a raster of heights, in which they are looked for by trying all. */
class FlatSpacesTest {
    private static final Size ROOM = new Size(9, 7, 8);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void holdsAllLargestFlatRectanglesAndNoOther(long seed) {
        Dice dice = new Dice(seed);
        FlatSpaces spaces = new FlatSpaces(ROOM, 1, 1);
        spaces.clear(SpaceRule.LOWEST);
        int[][] heights = new int[ROOM.x()][ROOM.y()];
        for (int put = 0; put < 25 && spaces.size() > 0; put++) {
            int s = dice.below(spaces.size());
            int x1 = spaces.x1(s) - dice.below(spaces.x1(s) - spaces.x0(s));
            int x0 = x1 - 1 - dice.below(x1 - spaces.x0(s));
            int y1 = spaces.y1(s) - dice.below(spaces.y1(s) - spaces.y0(s));
            int y0 = y1 - 1 - dice.below(y1 - spaces.y0(s));
            int z0 = spaces.z0(s);
            int z1 = z0 + 1 + dice.below(Math.min(3, ROOM.z() - z0));

            spaces.put(x0, y0, z0, x1, y1, z1, new int[] {0, 0, x1 - x0, y1 - y0, z1 - z0}, false, false);
            for (int x = x0; x < x1; x++) {
                for (int y = y0; y < y1; y++) {
                    heights[x][y] = z1;
                }
            }

            assertThat(listed(spaces)).as("seed %d, put %d", seed, put).isEqualTo(tried(heights));
        }
    }

    private static Set<String> listed(Spaces spaces) {
        Set<String> listed = new TreeSet<>();
        for (int i = 0; i < spaces.size(); i++) {
            assertThat(spaces.z1(i)).isEqualTo(ROOM.z());
            assertThat(listed.add(text(spaces.x0(i), spaces.y0(i), spaces.x1(i), spaces.y1(i), spaces.z0(i))))
                    .isTrue();
        }
        return listed;
    }

    private static String text(int x0, int y0, int x1, int y1, int z) {
        return x0 + "-" + x1 + " " + y0 + "-" + y1 + " at " + z;
    }

    private static Set<String> tried(int[][] heights) {
        Set<String> found = new TreeSet<>();
        for (int x0 = 0; x0 < ROOM.x(); x0++) {
            for (int y0 = 0; y0 < ROOM.y(); y0++) {
                for (int x1 = x0 + 1; x1 <= ROOM.x(); x1++) {
                    for (int y1 = y0 + 1; y1 <= ROOM.y(); y1++) {
                        int z = heights[x0][y0];
                        if (z < ROOM.z()
                                && flat(heights, x0, y0, x1, y1)
                                && !flat(heights, x0 - 1, y0, x1, y1)
                                && !flat(heights, x0, y0 - 1, x1, y1)
                                && !flat(heights, x0, y0, x1 + 1, y1)
                                && !flat(heights, x0, y0, x1, y1 + 1)) {
                            found.add(text(x0, y0, x1, y1, z));
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean flat(int[][] heights, int x0, int y0, int x1, int y1) {
        if (x0 < 0 || y0 < 0 || x1 > ROOM.x() || y1 > ROOM.y()) {
            return false;
        }
        for (int x = x0; x < x1; x++) {
            for (int y = y0; y < y1; y++) {
                if (heights[x][y] != heights[x0][y0]) {
                    return false;
                }
            }
        }
        return true;
    }
}
