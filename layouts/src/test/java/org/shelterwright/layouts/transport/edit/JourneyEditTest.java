package org.shelterwright.layouts.transport.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.edit.History;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.SampleJourney;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.JourneyScene;

class JourneyEditTest {
    private static final JourneyScene START = SampleJourney.loaded();
    private static final Pose PLACE = Pose.at(Point.ofMm(1_000, 200, 0));

    private static Journey after(JourneyEdit... edits) {
        Journey journey = START.journey();
        for (JourneyEdit edit : edits) {
            journey = edit.apply(journey);
        }
        return journey;
    }

    private static Load load(Journey journey, String id) {
        return journey.load(id).orElseThrow();
    }

    @Test
    void whatIsPutOnACarStandsThereAndKeepsItsPin() {
        Journey moved = after(new PutStand("wagon-1", "river-post", PLACE));

        assertThat(load(moved, "wagon-1").stand("river-post")).contains(new Stand("river-post", PLACE, true));
        assertThat(new PutStand("wagon-1", "river-post", PLACE).name()).isEqualTo("Put river-post on wagon-1");
    }

    @Test
    void fromAnotherCarOfTheSameLegItComesWithoutWhatHeldItThere() {
        Lashing over = Lashing.over("B", "tie-down", List.of("river-post", "generator-trailer"), "right 1", "left 1");

        Journey moved = after(
                new AddLashing("wagon-1", Lashing.direct("A", "chain", "river-post", "front left", "left 1")),
                new AddLashing("wagon-1", over),
                new AddBlock("wagon-1", new Block("river-post", Block.Way.CHOCKS, List.of(Face.FRONT), 4, null)),
                new PutStand("wagon-2", "river-post", PLACE));

        assertThat(load(moved, "wagon-1").stand("river-post")).isEmpty();
        assertThat(load(moved, "wagon-2").stand("river-post")).contains(new Stand("river-post", PLACE, false));
        assertThat(load(moved, "wagon-1").blocks()).isEmpty();
        assertThat(load(moved, "wagon-1").lashings())
                .containsExactly(Lashing.over("B", "tie-down", List.of("generator-trailer"), "right 1", "left 1"));
    }

    @Test
    void onCarsOfOtherLegsItStaysWhereItIs() {
        Journey both = after(new PutStand("lorry-1", "crate-1", PLACE), new PutStand("wagon-2", "crate-1", PLACE));

        assertThat(load(both, "lorry-1").stand("crate-1")).isPresent();
        assertThat(load(both, "wagon-2").stand("crate-1")).isPresent();
    }

    @Test
    void whatIsTakenOffIsGoneAndWhatIsPinnedIsPinned() {
        Journey journey =
                after(new PinStand("wagon-1", "river-post", false), new TakeOff("wagon-1", "generator-trailer"));

        assertThat(load(journey, "wagon-1").stands())
                .extracting(Stand::what, Stand::pinned)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("river-post", false));
    }

    @Test
    void whatHoldsIsTakenOffPieceByPieceOrAllAtOnce() {
        JourneyEdit a = new AddLashing("wagon-1", Lashing.direct("A", "chain", "river-post", "front left", "left 1"));
        JourneyEdit b =
                new AddLashing("wagon-1", Lashing.direct("B", "chain", "generator-trailer", "front left", "left 9"));

        assertThat(load(after(a, b, new LetGo("wagon-1", List.of("river-post"))), "wagon-1")
                        .lashings())
                .extracting(Lashing::key)
                .containsExactly("B");
        assertThat(load(after(a, b, new LetGo("wagon-1", List.of())), "wagon-1").lashings())
                .isEmpty();
        assertThat(load(after(a, b, new TakeLashing("wagon-1", "B")), "wagon-1").lashings())
                .extracting(Lashing::key)
                .containsExactly("A");
    }

    @Test
    void theMethodAndTheCarAreSet() {
        Journey journey = after(
                new SetMethod("wagon-1", Load.HandBrake.RELEASED, Load.Gear.ENGAGED, false),
                new ChangeCar("wagon-1", "flat-wagon-2-axle"));

        assertThat(load(journey, "wagon-1").handBrake()).isEqualTo(Load.HandBrake.RELEASED);
        assertThat(load(journey, "wagon-1").car()).isEqualTo("flat-wagon-2-axle");
    }

    @Test
    void whatMakesNoSenseIsRefusedInASentence() {
        assertThatThrownBy(() -> after(new PutStand("wagon-9", "river-post", PLACE)))
                .hasMessage("There is no load \"wagon-9\" in this journey.");
        assertThatThrownBy(() -> after(new PutStand("wagon-1", "boat", PLACE)))
                .hasMessage("There is no piece or load \"boat\" in this journey.");
        assertThatThrownBy(() -> after(new PutStand("wagon-1", "wagon-1", PLACE)))
                .hasMessage("Wagon 1 cannot stand on itself.");
        assertThatThrownBy(() -> after(new TakeOff("wagon-1", "crate-1")))
                .hasMessage("Spares crate 1 does not stand on Wagon 1. Put it there first.");
        assertThatThrownBy(() -> after(new TakeLashing("wagon-1", "Z")))
                .hasMessage("There is no lashing Z on Wagon 1.");
        JourneyEdit a = new AddLashing("wagon-1", Lashing.direct("A", "chain", "river-post", "front left", "left 1"));
        assertThatThrownBy(() -> after(a, a))
                .hasMessage("There is a lashing A on Wagon 1 already. Give this one another key.");
    }

    @Test
    void changesCanBeUndoneAndDoneAgainByName() {
        History<Journey> history = History.of(START.journey()).after(new TakeOff("wagon-1", "river-post"));

        assertThat(history.undoNames()).containsExactly("Take off river-post");
        assertThat(history.undo().current()).isEqualTo(START.journey());
        assertThat(history.undo().redo()).extracting(History::current).isEqualTo(history.current());
    }

    /** The ledger that follows edits against the full one. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theLedgerAnsweredForWhatChangedIsTheFullOne(long seed) {
        Random random = new Random(seed);
        JourneyScene scene = START;
        JourneyLedger ledger = TransportRig.CHECKER.check(scene);
        List<String> loads = List.of("wagon-1", "wagon-2", "lorry-1");
        List<String> pieces = List.of("river-post", "generator-trailer", "water-lab", "crate-1", "crate-2");
        for (int i = 0; i < 12; i++) {
            JourneyEdit edit = new PutStand(
                    loads.get(random.nextInt(loads.size())),
                    pieces.get(random.nextInt(pieces.size())),
                    Pose.at(Point.ofMm(random.nextInt(9_000), random.nextInt(900), 0)));
            JourneyScene next = scene.with(edit.apply(scene.journey()));
            ledger = TransportRig.CHECKER.update(ledger, scene, next);
            assertThat(ledger).as("seed " + seed + ", move " + i).isEqualTo(TransportRig.CHECKER.check(next));
            scene = next;
        }
    }

    @Test
    void anAcceptedRowOfALegIsReplacedAndTakenBack() {
        List<String> units = List.of("river-post", "wagon-1");
        Acceptance first =
                new Acceptance("transport.outline", units, "The railway agreed.", "P. Planner", "2026-03-01");
        Acceptance second =
                new Acceptance("transport.outline", units, "It agreed in writing.", "P. Planner", "2026-03-02");

        Journey twice = after(new AcceptLegRow("rail", first), new AcceptLegRow("rail", second));
        Journey none = new WithdrawLegAcceptance("rail", "transport.outline", units).apply(twice);

        assertThat(twice.leg("rail").orElseThrow().acceptance("transport.outline", units))
                .contains(second);
        assertThat(twice.leg("rail").orElseThrow().acceptance("transport.outline", List.of("river-post")))
                .isEmpty();
        assertThat(none).isEqualTo(START.journey());
        assertThat(new AcceptLegRow("rail", first).name()).isEqualTo("Accept transport.outline");
        assertThat(new WithdrawLegAcceptance("rail", "transport.outline", units).name())
                .isEqualTo("Accept transport.outline no more");
        assertThatThrownBy(() -> after(new AcceptLegRow("sea", first)))
                .hasMessage("There is no leg \"sea\" in this journey.");
    }
}
