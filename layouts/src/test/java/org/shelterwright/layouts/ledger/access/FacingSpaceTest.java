package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

class FacingSpaceTest {
    private static final int MM = 1000;
    private static final int X = 40;
    private static final int Y = 30;

    /** In small rooms of whole millimetres, every place of the space is tried, millimetre by millimetre. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void theDeepestSpaceIsFound(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 60; round++) {
            Scene scene = scene(random);
            PlacedUnit owner = scene.units().get(0);
            Box outline = owner.outline(Situation.ON_STATION);
            for (Face face : List.of(Face.FRONT, Face.REAR, Face.LEFT, Face.RIGHT)) {
                int width = 1 + random.nextInt(14);

                FacingSpace found =
                        FacingSpace.before(scene, owner, face, outline.face(face), width * MM, (unit, solid) -> false);

                assertThat(found.depth())
                        .as("seed " + seed + ", round " + round + ", " + face + ", width " + width)
                        .isEqualTo(MM * deepest(scene, outline, face, width));
                if (!found.place().flat()) {
                    assertThat(scene.units())
                            .allSatisfy(unit -> assertThat(unit == owner || free(unit, found.place()))
                                    .isTrue());
                    assertThat(found.place().extent(across(face))).isEqualTo(width * MM);
                }
            }
        }
    }

    private static boolean free(PlacedUnit unit, Box place) {
        return unit.solids(Situation.ON_STATION).stream().noneMatch(place::overlaps);
    }

    private static Axis across(Face face) {
        return face.axis() == Axis.X ? Axis.Y : Axis.X;
    }

    private static Scene scene(Random random) {
        Trial trial = Trial.in(TrialBody.of(X, Y, 20)
                .intrusion("arch", Box.ofMm(0, 0, 0, 1 + random.nextInt(6), 1 + random.nextInt(6), 5)));
        trial.floor("owner", TrialItem.of("owner", 6, 5, 8), 10 + random.nextInt(20), 8 + random.nextInt(12));
        for (int i = 0; i < 7; i++) {
            int x = 1 + random.nextInt(6);
            int y = 1 + random.nextInt(6);
            String id = "u" + i;
            TrialItem item = TrialItem.of(id, x, y, 4);
            int atX = random.nextInt(X - x);
            int atY = random.nextInt(Y - y);
            int z = random.nextInt(3) == 0 ? 8 : random.nextInt(6);
            trial.put(id, item, Trial.at(Surface.FLOOR, atX, atY, z, QuarterTurn.R0));
        }
        return trial.scene();
    }

    /** In mm; the plain twin. */
    private static int deepest(Scene scene, Box outline, Face face, int width) {
        List<Box> solids = new ArrayList<>();
        scene.body().intrusions().forEach(one -> solids.add(one.box()));
        scene.units().stream().skip(1).forEach(unit -> solids.addAll(unit.solids(Situation.ON_STATION)));
        Axis across = across(face);
        int low = outline.low(across) / MM;
        int high = outline.high(across) / MM;
        int room = across == Axis.X ? X : Y;
        int best = 0;
        for (int start = 0; start + width <= room; start++) {
            boolean covers = start <= low && start + width >= high;
            boolean within = start >= low && start + width <= high;
            if (covers || within) {
                best = Math.max(best, depth(solids, outline, face, start, width));
            }
        }
        return best;
    }

    private static int depth(List<Box> solids, Box outline, Face face, int start, int width) {
        int depth = 0;
        while (true) {
            int at = face.sign() > 0
                    ? outline.high(face.axis()) / MM + depth
                    : outline.low(face.axis()) / MM - depth - 1;
            if (at < 0 || at >= (face.axis() == Axis.X ? X : Y)) {
                return depth;
            }
            Box slice = face.axis() == Axis.X
                    ? Box.ofMm(at, start, 0, at + 1, start + width, 8)
                    : Box.ofMm(start, at, 0, start + width, at + 1, 8);
            if (solids.stream().anyMatch(slice::overlaps)) {
                return depth;
            }
            depth++;
        }
    }

    @Test
    void aZoneBelongsToTheSideBeyondWhichItReachesFarthest() {
        Box outline = Box.ofMm(100, 100, 0, 200, 200, 100);

        assertThat(FacingSpace.sideOf(outline, Box.ofMm(150, 150, 0, 400, 210, 100)))
                .isEqualTo(Face.FRONT);
        assertThat(FacingSpace.sideOf(outline, Box.ofMm(0, 90, 0, 210, 200, 100)))
                .isEqualTo(Face.REAR);
        assertThat(FacingSpace.sideOf(outline, Box.ofMm(90, 150, 0, 210, 400, 100)))
                .isEqualTo(Face.LEFT);
        assertThat(FacingSpace.sideOf(outline, Box.ofMm(90, 0, 0, 210, 210, 100)))
                .isEqualTo(Face.RIGHT);
        assertThat(FacingSpace.sideOf(outline, outline)).isEqualTo(Face.FRONT);
    }

    @Test
    void whatStandsBehindThePlaneIsNotInTheWay() {
        Trial trial = Trial.in(TrialBody.of(400, 300, 200))
                .floor("owner", TrialItem.of("owner", 100, 100, 100), 100, 100)
                .floor("beside", TrialItem.of("beside", 100, 100, 100), 100, 200);
        PlacedUnit owner = trial.scene().units().get(0);
        Box front = Box.ofMm(200, 100, 0, 200, 200, 100);

        FacingSpace space =
                FacingSpace.before(trial.scene(), owner, Face.FRONT, front, 200 * MM, (unit, solid) -> false);

        assertThat(space.depth()).isEqualTo(200 * MM);
        assertThat(space.name()).isEqualTo("the front wall");
        assertThat(space.unit()).isNull();
        assertThat(space.place().extent(Axis.X)).isEqualTo(200 * MM);
    }

    @Test
    void aPartOfTheBodyEndsTheSpaceToo() {
        Trial trial = Trial.in(TrialBody.of(400, 300, 200).intrusion("wheel arch", Box.ofMm(350, 0, 0, 400, 300, 50)))
                .floor("owner", TrialItem.of("owner", 100, 100, 100), 100, 100);
        Scene scene = trial.scene();

        FacingSpace space = FacingSpace.before(
                scene,
                scene.units().get(0),
                Face.FRONT,
                Box.ofMm(200, 100, 0, 200, 200, 100),
                100 * MM,
                (unit, solid) -> false);

        assertThat(space.depth()).isEqualTo(150 * MM);
        assertThat(space.name()).isEqualTo("wheel arch");
    }
}
