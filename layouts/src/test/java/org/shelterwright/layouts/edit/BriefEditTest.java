package org.shelterwright.layouts.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Occupant;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.brief.Wish;
import org.shelterwright.layouts.file.SmallPost;
import org.shelterwright.layouts.layout.Layout;

/** Edits of what is asked. */
class BriefEditTest {
    private static final Layout START = SmallPost.layout();

    @Test
    void theTrailerComesOffWithWhatRidesOnItAndGoesBackOn() {
        Trailer trailer = START.brief().trailer();

        Layout off = SetTrailer.none().apply(START);
        Layout on = new SetTrailer(trailer, SmallPost.TRAILER, List.of(SmallPost.GENERATOR)).apply(off);

        assertThat(off.brief().trailer()).isNull();
        assertThat(off.parts().trailer()).isNull();
        assertThat(off.parts().items()).doesNotContainKey("generator");
        assertThat(off.brief().wires()).isEqualTo(START.brief().wires());
        assertThat(on).isEqualTo(START);
        assertThat(SetTrailer.none().name()).isEqualTo("Take the trailer off");
        assertThat(new SetTrailer(trailer, SmallPost.TRAILER, List.of()).name()).isEqualTo("Put trailer trailer on");
    }

    @Test
    void wiresToWhatRodeOnTheTrailerGoWithIt() {
        Wire wire = new Wire("w2", "generator-1/mains", "rack-1/power", "5G6", null);
        Layout wired = Units.with(
                START,
                START.brief().withWires(List.of(wire, START.brief().wires().get(0))),
                START.parts().items());

        assertThat(SetTrailer.none().apply(wired).brief().wires())
                .isEqualTo(START.brief().wires());
    }

    @Test
    void aTrailerThatMakesNoSenseIsRefused() {
        Trailer trailer = START.brief().trailer();
        Layout off = SetTrailer.none().apply(START);
        Trailer taken = new Trailer(
                "trailer",
                List.of(new TrailerLoad(new UnitSpec("rack-1", "Rack", "rack", "x"), Pose.at(Point.ORIGIN))));

        assertThatThrownBy(() -> new SetTrailer(trailer, SmallPost.TRUCK, List.of()))
                .hasMessage("The trailer is \"trailer\", but the entry given is \"truck\".");
        assertThatThrownBy(() -> new SetTrailer(null, SmallPost.TRAILER, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SetTrailer(trailer, SmallPost.TRAILER, List.of()).apply(off))
                .hasMessage("The unit \"generator-1\" is of item \"generator\", which is not given.");
        assertThatThrownBy(() -> new SetTrailer(taken, SmallPost.TRAILER, List.of()).apply(off))
                .hasMessage("The unit id \"rack-1\" is given already. Give the new unit another id.");
    }

    @Test
    void setsTheCrewAndThePeopleInside() {
        List<Occupant> people = List.of(new Occupant("table-1", Situation.ON_STATION));

        assertThat(new SetCrew(1).apply(START).brief().crew()).isEqualTo(1);
        assertThat(new SetCrew(1).name()).isEqualTo("Set crew to 1");
        assertThat(new SetOccupants(people).apply(START).brief().occupants()).isEqualTo(people);
        assertThat(new SetOccupants(people).name()).isEqualTo("Set people inside to 1");
        assertThatThrownBy(() -> new SetCrew(-1)).hasMessage("The crew of -1 must be at least 0.");
        assertThatThrownBy(() -> new SetOccupants(List.of(new Occupant("table-2", Situation.ON_STATION))).apply(START))
                .hasMessageContaining("The brief has no unit \"table-2\".");
    }

    @Test
    void choosesRuleSets() {
        SetRuleSets edit = new SetRuleSets(List.of("shelter-common", "workplace-us"));

        assertThat(edit.apply(START).brief().ruleSets()).containsExactly("shelter-common", "workplace-us");
        assertThat(edit.name()).isEqualTo("Choose rule sets shelter-common, workplace-us");
        assertThat(new SetRuleSets(List.of()).name()).isEqualTo("Choose no rule set");
    }

    @Test
    void addsAndRemovesAWish() {
        Wish wish = new Wish(Wish.Kind.ALONG_WALL, List.of("rack-2"), null, Face.LEFT);

        Layout added = new AddWish(wish).apply(START);

        assertThat(added.brief().wishes()).hasSize(3).endsWith(wish);
        assertThat(new RemoveWish(wish).apply(added)).isEqualTo(START);
        assertThat(new AddWish(wish).name()).isEqualTo("Wish rack-2");
        assertThat(new RemoveWish(wish).name()).isEqualTo("No longer wish rack-2");
        assertThatThrownBy(() -> new RemoveWish(wish).apply(START)).hasMessage("The brief has no such wish.");
    }

    @Test
    void aWishThatMakesNoSenseIsRefused() {
        assertThatThrownBy(() -> new AddWish(new Wish(Wish.Kind.SAME_SIDE, List.of("rack-1"), null, null)))
                .hasMessage("This wish names 1 units; it needs at least 2.");
        assertThatThrownBy(() -> new AddWish(new Wish(Wish.Kind.NEAR, List.of("rack-1", "rack-2"), null, null)))
                .hasMessage("A wish for units near each other or apart needs a distance of at least 0 mm.");
        assertThatThrownBy(() -> new AddWish(new Wish(Wish.Kind.APART, List.of("rack-1", "rack-2"), -1, null)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new AddWish(new Wish(Wish.Kind.FACING, List.of("rack-1"), null, Face.TOP)))
                .hasMessage("This wish needs a face: front, rear, left or right.");
        assertThatThrownBy(
                        () -> new AddWish(new Wish(Wish.Kind.FACING, List.of("rack-9"), null, Face.LEFT)).apply(START))
                .hasMessageContaining("The brief has no unit \"rack-9\".");
    }

    @Test
    void aUnitOfAnotherItemKeepsItsPlaceAndTheWiresThatFit() {
        Item narrow = SmallPost.item("narrow", "[600, 500, 1600]", "\"mounting\": {\"surfaces\": [\"floor\"]}");
        Item same = SmallPost.item("slim", "[600, 500, 1600]", """
                "mounting": {"surfaces": ["floor"]}, "ports": [{"name": "power", "at": [0, 0, 0], "face": "rear",
                 "cableClass": "power", "connector": "C20"}]""");

        Layout without = new SwapItem("rack-1", narrow).apply(START);
        Layout with = new SwapItem("rack-1", same).apply(START);

        assertThat(without.item(without.brief().units().get(0))).isEqualTo(narrow);
        assertThat(without.placements()).isEqualTo(START.placements());
        assertThat(without.brief().wires()).isEmpty();
        assertThat(without.parts().items()).containsKeys("rack", "narrow");
        assertThat(with.brief().wires()).isEqualTo(START.brief().wires());
        assertThat(new SwapItem("rack-2", narrow).apply(without).parts().items())
                .doesNotContainKey("rack");
        assertThat(new SwapItem("rack-1", narrow).name()).isEqualTo("Make rack-1 a narrow");
    }

    @Test
    void aChangedItemIsThatOfAllItsUnitsAndTheCatalogIsNotAsked() {
        Item wider = SmallPost.item("rack", "[600, 700, 1600]", "\"mounting\": {\"surfaces\": [\"floor\"]}");
        Item wired = SmallPost.item("rack", "[600, 700, 1600]", """
                "mounting": {"surfaces": ["floor"]}, "ports": [{"name": "power", "at": [0, 0, 0], "face": "rear",
                 "cableClass": "power", "connector": "C20"}]""");

        Layout without = new ChangeItem(wider).apply(START);
        Layout with = new ChangeItem(wired).apply(START);

        assertThat(without.parts().item("rack")).isEqualTo(wider);
        assertThat(without.brief().units()).isEqualTo(START.brief().units());
        assertThat(without.placements()).isEqualTo(START.placements());
        assertThat(without.brief().wires()).as("the port is gone").isEmpty();
        assertThat(with.brief().wires()).isEqualTo(START.brief().wires());
        assertThat(new ChangeItem(START.parts().item("rack")).apply(START)).isEqualTo(START);
        assertThat(new ChangeItem(wider).name()).isEqualTo("Change item " + wider.name());
        Item other = SmallPost.item("narrow", "[600, 500, 1600]", "\"mounting\": {\"surfaces\": [\"floor\"]}");
        assertThatThrownBy(() -> new ChangeItem(other).apply(START)).hasMessage("The layout holds no item \"narrow\".");
    }

    @Test
    void anotherVersionOfAHeldItemIsRefused() {
        Item other = SmallPost.item("table", "[600, 500, 1600]", "\"mounting\": {\"surfaces\": [\"floor\"]}");

        assertThatThrownBy(() -> new SwapItem("rack-1", other).apply(START))
                .hasMessage("The layout holds another version of item \"table\". Take over the catalog's version first,"
                        + " or use the version that it holds.");
    }
}
