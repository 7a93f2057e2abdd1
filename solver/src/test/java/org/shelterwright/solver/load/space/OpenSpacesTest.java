package org.shelterwright.solver.load.space;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.kernel.Dice;

/** The list of empty cuboids against a raster, in which they are looked for by trying all. */
class OpenSpacesTest {
    private static final Size ROOM = new Size(6, 5, 5);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void holdsAllLargestEmptyCuboidsAndNoOther(long seed) {
        Dice dice = new Dice(seed);
        OpenSpaces spaces = new OpenSpaces(ROOM, 1, 1);
        spaces.clear(SpaceRule.NEAREST);
        boolean[][][] full = new boolean[ROOM.x()][ROOM.y()][ROOM.z()];
        for (int put = 0; put < 10 && spaces.size() > 0; put++) {
            int s = dice.below(spaces.size());
            int x1 = spaces.x0(s) + 1 + dice.below(Math.min(3, spaces.x1(s) - spaces.x0(s)));
            int y1 = spaces.y0(s) + 1 + dice.below(Math.min(3, spaces.y1(s) - spaces.y0(s)));
            int z1 = spaces.z0(s) + 1 + dice.below(Math.min(3, spaces.z1(s) - spaces.z0(s)));
            int x0 = spaces.x0(s);
            int y0 = spaces.y0(s);
            int z0 = spaces.z0(s);

            spaces.put(x0, y0, z0, x1, y1, z1, new int[0], false, false);
            for (int x = x0; x < x1; x++) {
                for (int y = y0; y < y1; y++) {
                    for (int z = z0; z < z1; z++) {
                        full[x][y][z] = true;
                    }
                }
            }

            assertThat(listed(spaces)).as("seed %d, put %d", seed, put).isEqualTo(tried(full));
        }
    }

    private static Set<String> listed(Spaces spaces) {
        Set<String> listed = new TreeSet<>();
        for (int i = 0; i < spaces.size(); i++) {
            listed.add(text(spaces.x0(i), spaces.y0(i), spaces.z0(i), spaces.x1(i), spaces.y1(i), spaces.z1(i)));
        }
        return listed;
    }

    private static String text(int x0, int y0, int z0, int x1, int y1, int z1) {
        return x0 + "-" + x1 + " " + y0 + "-" + y1 + " " + z0 + "-" + z1;
    }

    private static Set<String> tried(boolean[][][] full) {
        Set<String> found = new TreeSet<>();
        for (int x0 = 0; x0 < ROOM.x(); x0++) {
            for (int y0 = 0; y0 < ROOM.y(); y0++) {
                for (int z0 = 0; z0 < ROOM.z(); z0++) {
                    for (int x1 = x0 + 1; x1 <= ROOM.x(); x1++) {
                        for (int y1 = y0 + 1; y1 <= ROOM.y(); y1++) {
                            for (int z1 = z0 + 1; z1 <= ROOM.z(); z1++) {
                                if (largest(full, x0, y0, z0, x1, y1, z1)) {
                                    found.add(text(x0, y0, z0, x1, y1, z1));
                                }
                            }
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean largest(boolean[][][] full, int x0, int y0, int z0, int x1, int y1, int z1) {
        return empty(full, x0, y0, z0, x1, y1, z1)
                && !empty(full, x0 - 1, y0, z0, x1, y1, z1)
                && !empty(full, x0, y0 - 1, z0, x1, y1, z1)
                && !empty(full, x0, y0, z0 - 1, x1, y1, z1)
                && !empty(full, x0, y0, z0, x1 + 1, y1, z1)
                && !empty(full, x0, y0, z0, x1, y1 + 1, z1)
                && !empty(full, x0, y0, z0, x1, y1, z1 + 1);
    }

    private static boolean empty(boolean[][][] full, int x0, int y0, int z0, int x1, int y1, int z1) {
        if (x0 < 0 || y0 < 0 || z0 < 0 || x1 > ROOM.x() || y1 > ROOM.y() || z1 > ROOM.z()) {
            return false;
        }
        for (int x = x0; x < x1; x++) {
            for (int y = y0; y < y1; y++) {
                for (int z = z0; z < z1; z++) {
                    if (full[x][y][z]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
