package org.shelterwright.layouts.ways;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Bringing;
import org.shelterwright.catalog.item.PartOff;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Units that come in lying, or with parts off, as their items state. */
class BroughtInTest {
    /** A door of 1 000 x 1 500 mm under a roof at 2 200. */
    private static TrialBody body() {
        return TrialBody.of(4000, 2000, 2200)
                .opening("low door", Opening.Kind.DOOR, Face.REAR, Box.ofMm(0, 500, 0, 0, 1500, 1500), true, null)
                .floorGrid();
    }

    private static TrialItem tall() {
        return TrialItem.of("locker", 500, 800, 1800).mass(60.0, null);
    }

    private static Passage way(Trial trial) {
        Scene scene = trial.scene();
        return new UnitWays(scene).out(scene.unit("locker").orElseThrow(), new BitSet());
    }

    @Test
    void aTallUnitDoesNotComeUprightThroughALowDoor() {
        Passage way = way(Trial.in(body()).floor("locker", tall(), 3000, 600));

        assertThat(way.answer()).isEqualTo(Passage.Answer.TOO_LARGE);
    }

    @Test
    void itComesLyingOnASideThatItsItemAllows() {
        Bringing lying = new Bringing(List.of(Face.REAR), List.of());
        Trial trial = Trial.in(body()).rules("shelter-common").floor("locker", tall().bringing(lying), 3000, 600);

        Passage way = way(trial);

        assertThat(way.free()).isTrue();
        assertThat(way.lyingOn()).isEqualTo(Face.REAR);
        assertThat(way.stages()).filteredOn(Stage::lying).isNotEmpty();
        assertThat(way.legs().get(way.legs().size() - 1))
                .allSatisfy(box -> assertThat(box.z1()).isEqualTo(500_000));
        BoltDownStep step = step(trial);
        assertThat(StepWords.way(step.passage()).get(0)).startsWith("in through the low door, lying on its rear: ");
        assertThat(StepWords.way(step.passage())).contains("stand it up");
        assertThat(step.cautions())
                .contains(
                        "It comes in lying and is stood up: tied to the trolley until then, nobody where it may fall.");
    }

    @Test
    void whereItStandsUpItNeedsTheRoom() {
        Bringing lying = new Bringing(List.of(Face.REAR), List.of());
        // The diagonal of 500 x 1 800 is 1 868: a beam at 1 850 along the whole roof leaves no place to stand it up.
        Passage way = way(Trial.in(body().intrusion("beam", Box.ofMm(0, 0, 1850, 4000, 2000, 2200)))
                .floor("locker", tall().bringing(lying), 3000, 600));

        assertThat(way.free()).isFalse();
    }

    @Test
    void partsComeOffAndComeInByThemselves() {
        TrialItem cut = tall().solid(Box.ofMm(0, 0, 0, 500, 800, 1400)).solid(Box.ofMm(0, 0, 1400, 500, 800, 1800));
        String named = cut.build().solids().get(1).name();
        cut.bringing(new Bringing(List.of(), List.of(new PartOff("top box", List.of(named), 15, 12))));
        Trial trial = Trial.in(body()).rules("shelter-common").floor("locker", cut, 3000, 600);

        Passage way = way(trial);

        assertThat(way.free()).isTrue();
        assertThat(way.apart()).isTrue();
        BoltDownStep step = step(trial);
        assertThat(StepWords.fittings(step)).contains("Take off before, put on again at its place: top box (15 kg).");
        assertThat(step.handling()).isNotNull();
        assertThat(step.handling().massKg()).as("less the part").isLessThan(60);
        assertThat(step.checks()).anyMatch(check -> check.text().equals("Top box put on again"));
    }

    private static BoltDownStep step(Trial trial) {
        var layout = trial.layout().withBoltDown(BoltDownOrder.of(List.of("locker")));
        Scene scene = Scene.of(layout, Rules.of(layout.brief(), RuleSets.builtIn()));
        return BoltDownPlan.of(scene).orElseThrow().step("locker").orElseThrow();
    }

    @Test
    void whatIsStatedOfBringingInIsChecked() {
        assertThatThrownBy(() -> new Bringing(List.of(Face.TOP), List.of()))
                .hasMessage("An item is laid on its front, rear, left or right, not on top or bottom.");
        assertThatThrownBy(() -> tall().bringing(
                                new Bringing(List.of(), List.of(new PartOff("lid", List.of("lid"), 1, 1))))
                        .build())
                .hasMessage("The part \"lid\" of item locker names the solid \"lid\", which the item does not have.");
        assertThatThrownBy(() -> new Bringing(
                        List.of(), List.of(new PartOff("a", List.of("s"), 1, 1), new PartOff("b", List.of("s"), 1, 1))))
                .hasMessage("The solid \"s\" belongs to two parts that come off. Name it in one.");
    }
}
