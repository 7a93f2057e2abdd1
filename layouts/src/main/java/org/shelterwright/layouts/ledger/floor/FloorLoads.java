package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Fill;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.Holder;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.MassModel;
import org.shelterwright.layouts.state.OccupiedSeat;
import org.shelterwright.layouts.state.Quantity;

/**
 * The loads of the floor on the road and on station, in every combination of the tanks of the units and the people inside. A unit
 * presses with its own mass and with all that stands on it or hangs under it; what hangs on walls or the roof does not press on
 * the floor. A person on a seat presses through it, at a work place on the floor under its seat zone.
 */
final class FloorLoads {
    /** Standard gravity (m/s²): 3rd CGPM, 1901. */
    static final double G = 9.80665;

    private final List<FloorSituation> situations = new ArrayList<>();
    private final List<Gap> gaps;

    private FloorLoads(Scene scene) {
        gaps = new ArrayList<>(LoadStates.of(scene).gaps(Quantity.ofBody(Influence.MOMENT_X)));
        MassModel model = new MassModel(scene.rules());
        List<OccupiedSeat> people = OccupiedSeat.of(scene);
        boolean moves = !people.isEmpty();
        for (PlacedUnit unit : scene.units()) {
            moves |= unit.placement().road() != null;
        }
        situations.add(situation(scene, model, people, Situation.ON_THE_ROAD));
        if (moves) {
            situations.add(situation(scene, model, people, Situation.ON_STATION));
        }
    }

    static FloorLoads of(Scene scene) {
        return scene.derived(FloorLoads.class, FloorLoads::new);
    }

    /** On the road, and on station if anything is different there. */
    List<FloorSituation> situations() {
        return situations;
    }

    /** Figures that are missing for the loads. */
    List<Gap> gaps() {
        return gaps;
    }

    private FloorSituation situation(Scene scene, MassModel model, List<OccupiedSeat> people, Situation situation) {
        Standing[] byUnit = new Standing[scene.units().size()];
        List<Standing> standings = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            Footing footing = Footing.of(unit, situation);
            if (footing.plane() != null) {
                byUnit[unit.index()] = new Standing(unit, footing, false);
                standings.add(byUnit[unit.index()]);
            }
        }
        for (PlacedUnit unit : scene.units()) {
            Standing under = under(scene, unit, situation, byUnit);
            if (under != null) {
                add(under, unit, model, situation);
            }
        }
        for (OccupiedSeat seat : people) {
            if (seat.situation() == situation && seat.missing() == null) {
                add(scene, standings, seat, under(scene, seat.unit(), situation, byUnit));
            }
        }
        standings.stream().filter(Standing::tooMany).forEach(one -> gaps.add(tooMany(one)));
        return new FloorSituation(situation, standings);
    }

    private static void add(Standing under, PlacedUnit unit, MassModel model, Situation situation) {
        Item item = unit.item();
        MassData data = unit.mass(situation);
        Point centre = data.centre();
        if (data.massKg() != null && centre != null) {
            double grown = model.grownKg(data).orElse(data.massKg());
            double most = grown + model.uncertaintyKg(data).orElse(0);
            under.add(most, grown, unit.pose(situation).apply(centre, item.size()));
            Integer range = data.centreUncertainty();
            under.addUncertainCentre(range == null ? 0 : most * Lengths.metres(range));
        }
        for (Tank tank : item.tanks()) {
            Point at = unit.pose(situation).apply(tank.centre(), item.size());
            under.addContent(Fill.tank(tank.name(), unit.name()), tank.leastKg(), tank.fullKg(), at);
        }
    }

    private static void add(Scene scene, List<Standing> standings, OccupiedSeat seat, @Nullable Standing under) {
        Rect stand = seat.stand();
        Standing own = under;
        if (stand != null) {
            Rect room = Rect.of(scene.body().inside().box());
            Rect inside = new Rect(
                    Math.max(stand.x0(), room.x0()),
                    Math.max(stand.y0(), room.y0()),
                    Math.min(stand.x1(), room.x1()),
                    Math.min(stand.y1(), room.y1()));
            own = new Standing(seat.unit(), Footing.on(inside), true);
            standings.add(own);
        }
        if (own != null) {
            own.addContent(seat.fill(), 0, seat.massKg(), seat.at());
        }
    }

    private static Gap tooMany(Standing one) {
        return new Gap(
                Holder.BODY,
                Gap.Kind.MASS,
                one.owner().id(),
                one.owner().name() + " carries more than " + Standing.MOST_CONTENTS
                        + " tanks and people; not all their combinations are tried. Take some together as one tank.");
    }

    /** What on the floor carries a unit in the end; {@code null} if nothing does. */
    private static @Nullable Standing under(Scene scene, PlacedUnit unit, Situation situation, Standing[] byUnit) {
        PlacedUnit at = unit;
        for (int steps = 0; steps <= scene.units().size(); steps++) {
            String host = at.place(situation).host();
            if (host == null) {
                return byUnit[at.index()];
            }
            PlacedUnit next = scene.unit(host).orElse(null);
            if (next == null) {
                return null;
            }
            at = next;
        }
        return null;
    }
}
