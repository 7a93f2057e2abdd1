package org.shelterwright.layouts.ledger.transport.securing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.FloorMaterial;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.transport.Gravity;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.Crate;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.TransportRig;

/**
 * What stands on others slides and tips on them, however well those are held: the formulas of EN 12195-1:2010 for what is above the
 * tier. Timber on timber 0.4 (CSS Code, annex 13, from memory).
 */
class TiersTest {
    private static final double G = Gravity.STANDARD;

    /** 1 t blocked by beams of any strength, with 200 kg on top. */
    private static TransportRig blocked(Piece upper, double forwardG) {
        return new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 20_000.0))
                .piece(TransportRig.crate("a", Size.ofMm(2_000, 2_400, 1_000), 1_000.0), 2_000, 0, 0)
                .piece(upper, 2_000, 0, 1_000)
                .against(TransportRig.push(forwardG, 0, 0, 1, 1))
                .block(new Block("a", Block.Way.BEAMS, List.of(Face.FRONT), 4, 100_000.0));
    }

    private static Piece upper(int heightMm) {
        return TransportRig.crate("b", Size.ofMm(2_000, 2_400, heightMm), 200.0);
    }

    private static Row row(TransportRig rig, String limit, String title) {
        return rig.rows(limit).stream()
                .filter(row -> row.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    /** By hand: 200 kg push with 0.8 · 200 g and 0.4 · 200 g hold, although the beams below hold both crates. */
    @Test
    void theUpperCrateSlidesOffALowerOneThatIsBlocked() {
        TransportRig rig = blocked(upper(1_000), 0.8);

        Row whole = row(rig, "held", "Held, Crate a and Crate b");
        Row tier = row(rig, "held", "Held, Crate b, on top");
        assertThat(whole.verdict()).isEqualTo(Verdict.MET);
        assertThat(tier.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(tier.units()).containsExactly("b", "car");
        assertThat(tier.demand()).isCloseTo(0.8 * 200 * G / 1_000, within(1e-9));
        assertThat(tier.capacity()).isCloseTo(0.4 * 200 * G / 1_000, within(1e-9));
        assertThat(row(blocked(upper(1_000), 0.4), "held", "Held, Crate b, on top")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
    }

    /** A strap over both presses on what is between them too: 2 · 0.4 · sin α · F_T (EN 12195-1). */
    @Test
    void aTieDownOverBothHoldsTheUpperOneToo() {
        TransportRig rig =
                blocked(upper(1_000), 0.8).lash(Lashing.over("A1", "strap-50", List.of("a", "b"), "right 4", "left 4"));

        Row tier = row(rig, "held", "Held, Crate b, on top");
        assertThat(tier.verdict()).isEqualTo(Verdict.MET);
        assertThat(tier.capacity())
                .as("friction of its weight and of 4 kN in two upright legs, f_s 1.1")
                .isCloseTo((0.4 * 200 * G + 2 * 0.4 * 4_000 / 1.1) / 1_000, within(0.01));
    }

    /** b/d > c/c_z (EN 12195-1, quoted): 1 m to the edge against half of its height at 0.5 g, about the edge that it stands on. */
    @Test
    void theUpperCrateTipsAboutItsOwnFoot() {
        assertThat(row(blocked(upper(3_990), 0.5), "tipping", "Tipping, Crate b, on top")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        Row tips = row(blocked(upper(4_010), 0.5), "tipping", "Tipping, Crate b, on top");
        assertThat(tips.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(tips.finding())
                .startsWith("Crate b, centre 2005 mm high above what it stands on and 1000 mm from the edge");
    }

    @Test
    void whatItStandsOnMustBeKnown() {
        Row unknown = row(on(Underside.PLASTIC_PALLET, null), "held", "Held, Crate b, on top");
        assertThat(unknown.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unknown.finding())
                .isEqualTo(
                        "The friction of sawn timber on what Crate b stands on is not known. Give \"top\" of the pieces"
                                + " below, or the pair in a table of friction.");
        assertThat(row(on(Underside.PLASTIC_PALLET, FloorMaterial.PLYWOOD), "held", "Held, Crate b, on top")
                        .capacity())
                .as("sawn timber on plywood 0.45, CTU Code (seen)")
                .isCloseTo(0.45 * 200 * G / 1_000, within(1e-9));
    }

    private static TransportRig on(Underside underside, @Nullable FloorMaterial top) {
        Size size = Size.ofMm(2_000, 2_400, 1_000);
        Crate lower = new Crate(size, 1_000.0, null, size.box().centre(), underside, top, null, false, List.of());
        return new TransportRig()
                .on(TransportRig.plainCar(6_000, 2_400, 20_000.0))
                .piece(Piece.ofCrate("a", "Crate a", lower), 2_000, 0, 0)
                .piece(upper(1_000), 2_000, 0, 1_000)
                .against(TransportRig.push(0.3, 0, 0, 1, 1));
    }

    @Test
    void ofThreeTiersEachIsJudged() {
        TransportRig rig = blocked(upper(1_000), 0.3)
                .piece(TransportRig.crate("c", Size.ofMm(2_000, 2_400, 500), 50.0), 2_000, 0, 2_000);

        assertThat(rig.rows("held"))
                .extracting(Row::title)
                .containsExactlyInAnyOrder(
                        "Held, Crate a and 2 more", "Held, Crate b and Crate c, on top", "Held, Crate c, on top");
    }
}
