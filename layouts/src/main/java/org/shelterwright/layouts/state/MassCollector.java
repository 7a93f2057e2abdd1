package org.shelterwright.layouts.state;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.carrier.Seat;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.brief.Trailer;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.cable.CableMass;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Walks through a scene and notes every mass with its range, and every figure that is missing. */
final class MassCollector {
    private static final Situation[] SITUATIONS = Situation.values();

    private final Scene scene;
    private final MassModel model;
    /** By the number of the situation. */
    final List<MassTable> body = new ArrayList<>();

    final MassTable carrier;
    final MassTable trailer;
    final List<Fill> fills = new ArrayList<>();
    final List<Gap> gaps = new ArrayList<>();
    final int firstTrailerFill;
    private final Set<Figure> missingFigures = EnumSet.noneOf(Figure.class);

    MassCollector(Scene scene, MassModel model) {
        this.scene = scene;
        this.model = model;
        this.carrier = new MassTable();
        this.trailer = new MassTable();
        for (int i = 0; i < SITUATIONS.length; i++) {
            body.add(new MassTable());
        }
        filledBody();
        cables();
        occupants();
        scene.carrier().ifPresent(this::carrier);
        firstTrailerFill = fills.size();
        scene.trailer().ifPresent(this::trailer);
    }

    /** The same with all masses that no load state sets drawn from their ranges. */
    MassCollector drawn(SplittableRandom dice) {
        return new MassCollector(this, dice);
    }

    private MassCollector(MassCollector known, SplittableRandom dice) {
        this.scene = known.scene;
        this.model = known.model;
        this.firstTrailerFill = known.firstTrailerFill;
        fills.addAll(known.fills);
        gaps.addAll(known.gaps);
        Draw ofBody =
                new Draw(known.body.stream().mapToInt(MassTable::fixed).max().orElse(0), dice);
        known.body.forEach(table -> body.add(table.drawn(ofBody)));
        this.carrier = known.carrier.drawn(new Draw(known.carrier.fixed(), dice));
        this.trailer = known.trailer.drawn(new Draw(known.trailer.fixed(), dice));
    }

    private void filledBody() {
        MassData tare = scene.body().tare();
        if (known(
                Holder.BODY,
                tare,
                null,
                scene.body().name(),
                "body " + scene.body().id())) {
            for (MassTable table : body) {
                fixed(table, tare, null, Pose.at(Point.ORIGIN));
            }
        }
        for (PlacedUnit unit : scene.units()) {
            Item item = unit.item();
            String entry =
                    (scene.interiors().held(unit.id()).isEmpty() ? "item " : "the interior of item ") + item.id();
            MassData onRoad = unit.mass(Situation.ON_THE_ROAD);
            boolean known = known(Holder.BODY, onRoad, unit.spec(), unit.name(), entry);
            int firstFill = fills.size();
            item.tanks().forEach(tank -> fills.add(Fill.tank(tank.name(), unit.name())));
            for (Situation situation : SITUATIONS) {
                MassTable table = body.get(situation.ordinal());
                Pose pose = unit.pose(situation);
                if (known) {
                    fixed(table, unit.mass(situation), item, pose);
                }
                tanks(table, item, pose, firstFill);
            }
        }
    }

    /** Cables lie where their routes lead, at rest and on the road; those without a route are a matter of the subject cables. */
    private void cables() {
        for (CableMass mass : CableMass.of(scene)) {
            MassData data = mass.data();
            if (known(Holder.BODY, data, null, mass.name(), mass.entry())) {
                for (MassTable table : body) {
                    fixed(table, data, null, Pose.at(Point.ORIGIN));
                }
            }
        }
    }

    private void occupants() {
        for (OccupiedSeat seat : OccupiedSeat.of(scene)) {
            if (seat.missing() != null) {
                gaps.add(new Gap(Holder.BODY, Gap.Kind.MASS, seat.unit().id(), seat.missing()));
            } else {
                MassTable table = body.get(seat.situation().ordinal());
                table.addFill(fills.size(), 0, seat.massKg(), seat.at());
                fills.add(seat.fill());
            }
        }
    }

    private void carrier(Carrier entry) {
        vehicle(Holder.CARRIER, carrier, entry, null);
        crew(entry);
    }

    private void trailer(Carrier entry) {
        vehicle(Holder.TRAILER, trailer, entry, "the trailer");
        Trailer asked = scene.brief().trailer();
        for (TrailerLoad load : asked == null ? List.<TrailerLoad>of() : asked.loads()) {
            UnitSpec unit = load.unit();
            Item item = scene.layout().item(unit);
            if (known(Holder.TRAILER, item.mass(), unit, unit.name(), "item " + item.id())) {
                fixed(trailer, item.mass(), item, load.pose());
            }
            int firstFill = fills.size();
            item.tanks().forEach(tank -> fills.add(Fill.tank(tank.name(), unit.name())));
            tanks(trailer, item, load.pose(), firstFill);
        }
    }

    private void vehicle(Holder holder, MassTable table, Carrier entry, @Nullable String owner) {
        if (entry.tareCentreHeight() == null) {
            gaps.add(new Gap(
                    holder,
                    Gap.Kind.HEIGHT,
                    null,
                    "The carrier " + entry.name() + " has no height of its empty centre of mass. Give tareCentreHeight"
                            + " in carrier " + entry.id() + "."));
        }
        for (Tank tank : entry.tanks()) {
            table.addFill(fills.size(), tank.leastKg(), tank.fullKg(), tank.centre());
            fills.add(owner == null ? new Fill(tank.name(), Fill.Kind.TANK) : Fill.tank(tank.name(), owner));
        }
    }

    private void crew(Carrier entry) {
        int crew = scene.brief().crew();
        if (crew == 0) {
            return;
        }
        OptionalDouble personKg = scene.rules().value(Figure.PERSON_MASS);
        if (personKg.isEmpty() || entry.seats().size() < crew) {
            String sentence = personKg.isEmpty()
                    ? "No rule set states the mass of a person. Set " + Figure.PERSON_MASS.id() + " in the brief."
                    : "The brief has a crew of " + crew + ", but the carrier " + entry.name() + " has "
                            + entry.seats().size() + " seats. Give the seats in carrier " + entry.id() + ".";
            gaps.add(new Gap(Holder.CARRIER, Gap.Kind.MASS, null, sentence));
            return;
        }
        for (Seat seat : entry.seatsTaken(crew)) {
            carrier.addFill(fills.size(), 0, personKg.getAsDouble(), seat.at());
        }
        fills.add(Fill.CREW);
    }

    private void fixed(MassTable table, MassData data, @Nullable Item item, Pose pose) {
        double massKg = model.grownKg(data).orElse(0);
        double uncertaintyKg = model.uncertaintyKg(data).orElse(0);
        Point centre = data.centre() == null ? Point.ORIGIN : data.centre();
        Point placed = item == null ? centre : pose.apply(centre, item.size());
        int off = data.centreUncertainty() == null ? 0 : data.centreUncertainty();
        table.addFixed(massKg, uncertaintyKg, placed, off);
    }

    private static void tanks(MassTable table, Item item, Pose pose, int firstFill) {
        for (int i = 0; i < item.tanks().size(); i++) {
            Tank tank = item.tanks().get(i);
            table.addFill(firstFill + i, tank.leastKg(), tank.fullKg(), pose.apply(tank.centre(), item.size()));
        }
    }

    /** Notes what is missing; gives whether the mass can count. */
    private boolean known(Holder holder, MassData data, @Nullable UnitSpec unit, String name, String entry) {
        String id = unit == null ? null : unit.id();
        if (data.massKg() == null) {
            gaps.add(new Gap(holder, Gap.Kind.MASS, id, name + " has no mass. Give massKg in " + entry + "."));
            return false;
        }
        Figure missing = model.missingFigure(data);
        if (missing != null) {
            if (missingFigures.add(missing)) {
                gaps.add(new Gap(
                        holder,
                        Gap.Kind.MASS,
                        null,
                        "No rule set states " + missing.id() + ", which the mass of " + name
                                + " needs. Choose a rule set that does, or set it in the brief."));
            }
            return false;
        }
        if (data.centre() == null) {
            gaps.add(new Gap(
                    holder, Gap.Kind.CENTRE, id, name + " has no centre of mass. Give centre in " + entry + "."));
        }
        return true;
    }
}
