package org.shelterwright.app.desk.hand.order;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.hand.Moving;
import org.shelterwright.app.desk.hand.Remount;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.edit.PutUnits;
import org.shelterwright.layouts.edit.StowUnit;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Orders that mount what is selected elsewhere, and stow it on the road. */
final class MountOrders {
    private final Session session;

    private interface Places {
        Place of(Remount remount);
    }

    MountOrders(Session session) {
        this.session = session;
    }

    List<Command> all() {
        List<Command> all = new ArrayList<>();
        all.add(mount("mount-floor", "Mount on the floor", "F", Remount::onFloor));
        all.add(mount("mount-wall", "Mount on the nearest wall", "W", remount -> remount.onWall(null)));
        for (Face face : List.of(Face.LEFT, Face.RIGHT, Face.FRONT, Face.REAR)) {
            String wall = Wording.surface(face);
            String id = "mount-" + wall.substring(4).replace(' ', '-');
            all.add(mount(id, "Mount on " + wall, null, remount -> remount.onWall(face)));
        }
        all.add(mount("mount-roof", "Mount under the roof", "R", Remount::underRoof));
        all.add(host("mount-on", "Mount on the unit selected last", "M", false));
        all.add(host("mount-under", "Mount under the unit selected last", "Shift+M", true));
        all.add(Change.command(
                session,
                "stow",
                "Stow at a place of its own on the road",
                List.of("transport"),
                List.of("O"),
                MountOrders::stow));
        all.add(Change.command(
                session,
                "unstow",
                "Leave in place on the road",
                List.of("transport"),
                List.of("Shift+O"),
                chosen -> Change.of(
                        chosen,
                        "Leave " + chosen.words() + " in place on the road",
                        chosen.placed().stream()
                                .map(unit -> new StowUnit(unit.id(), null))
                                .toList())));
        return all;
    }

    private Command mount(String id, String name, @Nullable String key, Places places) {
        return Change.command(
                session, id, name, List.of("surface", "place"), key == null ? List.of() : List.of(key), chosen -> {
                    List<Placement> placements = chosen.placed().stream()
                            .map(unit -> placement(chosen, unit, places))
                            .toList();
                    String done = name.replace("Mount ", "Mount " + chosen.words() + " ");
                    return Change.of(chosen, new PutUnits(done, placements));
                });
    }

    private Command host(String id, String name, String key, boolean under) {
        return Change.command(session, id, name, List.of("host", "stack", "hang"), List.of(key), chosen -> {
            List<PlacedUnit> units = chosen.placed();
            if (units.size() < 2) {
                throw new IllegalArgumentException("Select what is to be mounted, then the unit that is to carry it.");
            }
            PlacedUnit host = chosen.leader();
            List<PlacedUnit> guests = units.subList(0, units.size() - 1);
            List<Placement> placements = guests.stream()
                    .map(unit -> placement(chosen, unit, remount -> remount.at(host, under)))
                    .toList();
            String guest = guests.size() == 1 ? guests.get(0).name() : guests.size() + " units";
            return Change.of(
                    chosen, new PutUnits("Mount " + guest + (under ? " under " : " on ") + host.name(), placements));
        });
    }

    private static Placement placement(Chosen chosen, PlacedUnit unit, Places places) {
        Situation situation = Moving.changed(unit, chosen.situation());
        return unit.placement().with(situation, places.of(new Remount(chosen.scene(), unit, situation)));
    }

    private static Change stow(Chosen chosen) {
        List<PlacedUnit> units = chosen.placed();
        for (PlacedUnit unit : units) {
            if (unit.placement().road() != null) {
                throw new IllegalArgumentException(unit.name()
                        + " has a place of its own on the road already. Show the layout on the road to move it.");
            }
        }
        return Change.of(
                chosen,
                "Stow " + chosen.words() + " at a place of its own",
                units.stream()
                        .map(unit -> new StowUnit(unit.id(), unit.placement().station()))
                        .toList());
    }
}
