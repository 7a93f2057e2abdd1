package org.shelterwright.app.desk.hand.order;

import java.util.List;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.hand.FreePlace;
import org.shelterwright.app.desk.hand.NewName;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.edit.AddUnit;
import org.shelterwright.layouts.edit.PutUnit;
import org.shelterwright.layouts.edit.RemoveUnit;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Orders that place, take out, remove and duplicate what is selected. */
final class PlaceOrders {
    private final Session session;

    PlaceOrders(Session session) {
        this.session = session;
    }

    List<Command> all() {
        return List.of(
                Change.command(
                        session,
                        "place",
                        "Place at the nearest free place",
                        List.of("put", "mount"),
                        List.of("Insert"),
                        PlaceOrders::place),
                Change.command(
                        session,
                        "take-out",
                        "Take out of the layout",
                        List.of("delete", "unplace"),
                        List.of("Delete"),
                        PlaceOrders::takeOut),
                Change.command(
                        session,
                        "remove",
                        "Remove from the brief",
                        List.of("delete", "strike"),
                        List.of("Shift+Delete"),
                        chosen -> Change.of(
                                chosen,
                                "Remove " + chosen.words(),
                                chosen.specs().stream()
                                        .map(unit -> new RemoveUnit(unit.id()))
                                        .toList())),
                Change.late(
                        session,
                        "duplicate",
                        "Duplicate",
                        List.of("copy", "another"),
                        List.of("Ctrl+D"),
                        Chosen::specs,
                        PlaceOrders::duplicate));
    }

    private static Change place(Chosen chosen) {
        List<UnitSpec> unplaced = chosen.specs().stream()
                .filter(unit -> chosen.scene().unit(unit.id()).isEmpty())
                .toList();
        if (unplaced.isEmpty()) {
            throw new IllegalArgumentException("All that is selected is placed already.");
        }
        Scene scene = chosen.scene();
        for (UnitSpec unit : unplaced) {
            Place place = new FreePlace(scene, unit)
                    .nearest(scene.body().inside().box().centre(), null);
            scene = scene.after(new PutUnit(unit.id(), place).apply(scene.layout()));
        }
        String words = unplaced.size() == 1 ? unplaced.get(0).name() : unplaced.size() + " units";
        return new Change("Place " + words, scene.layout());
    }

    private static Change takeOut(Chosen chosen) {
        List<PlacedUnit> units = chosen.placed();
        Layout layout = chosen.layout();
        for (PlacedUnit unit : units) {
            if (layout.placements().containsKey(unit.id())) {
                layout = new TakeOutUnit(unit.id()).apply(layout);
            }
        }
        return new Change("Take out " + chosen.words(), layout);
    }

    /** Each copy goes to the nearest free place in the same turn, else stays to be placed. */
    private static Change duplicate(Chosen chosen) {
        Layout layout = chosen.layout();
        for (UnitSpec unit : chosen.specs()) {
            Item item = layout.item(unit);
            UnitSpec copy = NewName.after(layout.brief(), unit);
            layout = new AddUnit(copy, item).apply(layout);
            PlacedUnit original = chosen.scene().unit(unit.id()).orElse(null);
            if (original != null) {
                Scene scene = Scene.of(layout, chosen.scene().rules());
                Point wish = original.outline(Situation.ON_STATION).centre();
                QuarterTurn turn = original.pose(Situation.ON_STATION).yaw();
                layout = new PutUnit(copy.id(), new FreePlace(scene, copy).nearest(wish, turn)).apply(layout);
            }
        }
        return new Change("Duplicate " + chosen.words(), layout);
    }
}
