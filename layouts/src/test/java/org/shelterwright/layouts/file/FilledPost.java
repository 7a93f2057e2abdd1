package org.shelterwright.layouts.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.rack.PowerStrip;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.Inventory;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;
import org.shelterwright.layouts.trial.TrialPiece;

/** The small post with pieces in its rack. */
public final class FilledPost {
    /** The unit that holds them. */
    public static final String UNIT = SmallPost.brief().units().stream()
            .filter(unit -> unit.item().equals(SmallPost.RACK.id()))
            .findFirst()
            .orElseThrow()
            .id();

    /** The rack of the small post with a bay of 20 U and a drawer. */
    public static final Item RACK = rack();

    private FilledPost() {}

    private static Item rack() {
        Item old = SmallPost.RACK;
        RackBay bay = new RackBay(
                "bay",
                20,
                new Point(old.size().x() - 50_000, old.size().y() / 2, 50_000),
                Face.FRONT,
                40_000,
                300_000,
                250_000,
                80.0,
                30.0,
                Airflow.FRONT_TO_REAR,
                200.0,
                List.of(new PowerStrip("strip A", "230 V ac", 10, 6)));
        Stowage drawer =
                new Stowage("drawer", Box.ofMm(50, 50, 50, 350, 350, 200), 10, null, null, "latch", null, null);
        return old.but()
                .stowages(List.of(drawer))
                .interior(new Interior(MassData.of(50, Point.ofMm(300, 300, 500), MassBasis.WEIGHED), List.of(bay)))
                .build();
    }

    private static Map<String, Piece> kinds(Piece... pieces) {
        Map<String, Piece> kinds = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            kinds.put(piece.id(), piece);
        }
        return kinds;
    }

    /** The layout, with a radio in the bay and a lamp in the drawer. */
    public static Layout layout() {
        Layout old = SmallPost.layout();
        Map<String, Item> items = new LinkedHashMap<>(old.parts().items());
        items.put(RACK.id(), RACK);
        Parts parts =
                new Parts(old.parts().body(), old.parts().carrier(), old.parts().trailer(), items);
        Piece radio = TrialPiece.racked("radio", 2, 250)
                .kg(8.0)
                .cables(Face.REAR, 30, 20)
                .watts(50)
                .build();
        Piece lamp = TrialPiece.loose("lamp", 120, 80, 80)
                .goods("3", "5.1")
                .bears(-10.0, 50.0)
                .build();
        Inventory inventory = new Inventory(
                List.of(new Task("watch", "Watch", UNIT, null, null)),
                List.of(
                        new PieceSpec("radio", "Radio", "radio", UNIT, null, null, null, false, "strip A", null),
                        new PieceSpec("lamp", "Lamp", "lamp", null, "watch", 1, Urgency.SOON, true, null, "watch")));
        return old.withAsked(old.brief().withInventory(inventory), parts)
                .withContents(new Contents(kinds(radio, lamp), Map.of())
                        .with(PiecePlace.inRack("radio", UNIT, "bay", 3))
                        .with(PiecePlace.stowed("lamp", UNIT, "drawer", Point.ofMm(60, 60, 50), Posture.TURNED)));
    }
}
