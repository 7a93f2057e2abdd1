package org.shelterwright.solver.inside.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.fit.kernel.Dice;

/** Packing measured on boxes that are cut from a place, so that nothing need be wasted. */
class PackingTest {
    private static final Box DRAWER = CutDrawer.WHOLE;

    @Test
    void cutDrawersArePackedNearlyFull() {
        double sum = 0;
        int whole = 0;
        int cases = 20;
        for (int seed = 0; seed < cases; seed++) {
            Dice dice = Dice.of(seed, 1);
            List<Parcel> parcels = CutDrawer.parcels(3 + seed % 6, dice);

            List<Packed> packed = new Repacking(DRAWER, Face.TOP, 0.75)
                    .pack(List.of(), parcels, dice, 60)
                    .packed();

            double filled =
                    packed.stream().mapToDouble(one -> one.box().volumeM3()).sum() / DRAWER.volumeM3();
            sum += filled;
            whole += packed.size() == parcels.size() ? 1 : 0;
            assertSound(packed, 0.75, seed);
        }
        assertThat(sum / cases).as("mean share of the volume").isGreaterThan(0.93);
        assertThat(whole).as("cases packed whole, of 20").isGreaterThanOrEqualTo(10);
    }

    @Test
    void twelvePartsOfADrawerAllGoInWithoutWaste() {
        for (int seed = 0; seed < 8; seed++) {
            Dice dice = Dice.of(seed, 1);
            List<Parcel> parcels = CutDrawer.parcels(12, dice);

            List<Packed> packed = new Repacking(DRAWER, Face.TOP, 0.75)
                    .pack(List.of(), parcels, dice, 6)
                    .packed();

            assertThat(packed).as("seed %d", seed).hasSize(12);
            assertSound(packed, 0.75, seed);
            assertThat(new Repacking(DRAWER, Face.TOP, 0.75)
                            .pack(List.of(), CutDrawer.parcels(12, Dice.of(seed, 1)), Dice.of(seed, 9), 6)
                            .packed())
                    .as("seed %d, again", seed)
                    .hasSize(12);
        }
    }

    @Test
    void goingBackKeepsWhatStandsUprightAndWhatIsFragile() {
        for (int seed = 0; seed < 12; seed++) {
            // As they were cut, all stand upright; those at the top are fragile.
            List<Parcel> parcels = CutDrawer.boxes(7, Dice.of(seed, 3)).stream()
                    .map(box -> new Parcel(
                            box.toString(),
                            new Size(box.extent(Axis.X), box.extent(Axis.Y), box.extent(Axis.Z)),
                            true,
                            box.z1() == DRAWER.z1(),
                            0))
                    .toList();
            PlacePacker packer = new PlacePacker(DRAWER, Axis.Y, 0.75);

            boolean all = CornerSearch.all(packer, DRAWER, parcels, 20_000);

            assertThat(all).as("seed %d", seed).isTrue();
            assertSound(packer.packed(), 0.75, seed);
            assertThat(packer.packed()).allMatch(one -> one.posture().upright());
            for (Packed lower : packer.packed()) {
                for (Packed upper : packer.packed()) {
                    assertThat(lower.parcel().fragile()
                                    && upper.box().z0() == lower.box().z1()
                                    && upper.box().moved(0, 0, -1).overlaps(lower.box()))
                            .as("seed %d, %s on %s", seed, upper, lower)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void whatDoesNotFitLeavesThePackerAsItWas() {
        PlacePacker packer = new PlacePacker(DRAWER, Axis.Y, 0.75);
        Parcel half = new Parcel("a", Size.ofMm(600, 260, 250), true, false, 0);
        Parcel other = new Parcel("b", Size.ofMm(600, 230, 250), true, false, 20_000);

        assertThat(CornerSearch.all(packer, DRAWER, List.of(half, other), 1_000))
                .as("no room for fingers")
                .isFalse();
        assertThat(packer.packed()).isEmpty();
    }

    @Test
    void withATenthOfSlackAllGoIn() {
        Box larger = Box.ofMm(0, 0, 0, 660, 550, 275);
        int whole = 0;
        for (int seed = 0; seed < 20; seed++) {
            Dice dice = Dice.of(seed, 2);
            List<Parcel> parcels = CutDrawer.parcels(8, dice);
            whole += new Repacking(larger, Face.TOP, 0.75)
                                    .pack(List.of(), parcels, dice, 60)
                                    .packed()
                                    .size()
                            == 8
                    ? 1
                    : 0;
        }
        assertThat(whole).isGreaterThanOrEqualTo(17);
    }

    private static void assertSound(List<Packed> packed, double rest, int seed) {
        for (Packed a : packed) {
            assertThat(DRAWER.contains(a.box())).as("seed %d", seed).isTrue();
            assertThat(a.posture().apply(a.parcel().size()))
                    .isEqualTo(new Size(
                            a.box().extent(Axis.X),
                            a.box().extent(Axis.Y),
                            a.box().extent(Axis.Z)));
            for (Packed b : packed) {
                assertThat(a != b && a.box().overlaps(b.box()))
                        .as("seed %d", seed)
                        .isFalse();
            }
        }
    }

    @Test
    void fingersFitBesideEachParcel() {
        PlacePacker packer = new PlacePacker(DRAWER, Axis.Y, 0.75);
        Parcel parcel = new Parcel("a", Size.ofMm(600, 100, 250), true, false, 25_000);

        int packed = 0;
        while (packer.add(new Parcel("a" + packed, parcel.size(), true, false, 25_000))) {
            packed++;
        }

        // 25 + 3 x (100 + 25) = 400, and a fourth would need 525 of 500 mm.
        assertThat(packed).isEqualTo(3);
        assertThat(packer.packed().get(1).box().y0()
                        - packer.packed().get(0).box().y1())
                .isEqualTo(25_000);
    }

    @Test
    void nothingIsLaidOnWhatIsFragile() {
        Box small = Box.ofMm(0, 0, 0, 100, 100, 200);
        PlacePacker packer = new PlacePacker(small, Axis.Y, 0.75);

        assertThat(packer.add(new Parcel("glass", Size.ofMm(100, 100, 50), true, true, 0)))
                .isTrue();
        assertThat(packer.add(new Parcel("b", Size.ofMm(100, 100, 50), true, false, 0)))
                .isFalse();
    }
}
