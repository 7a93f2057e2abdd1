package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.restraint.group.GroupForces;
import org.shelterwright.layouts.ledger.restraint.group.Spot;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What a restraint sheet says: the load cases, how each bolted unit is held, and what holds each loose one.
 */
public record RestraintSheet(List<LoadCase> cases, List<Group> groups, List<Loose> loose) {
    /**
     * A bolted unit.
     *
     * @param on what it is mounted on, in words
     * @param massKg mass that its fixings hold (kg)
     * @param centreHeightMm distance of the centre of that mass from the mounting plane (mm)
     * @param outline its size in the mounting plane, two corners (m)
     * @param contact corners of what touches the surface (m); none of a braced unit
     * @param centre centre of mass in the mounting plane (m)
     * @param push the governing push seen in the mounting plane; {@code null} if not solved
     * @param governing case and direction that govern; empty if not solved
     * @param missing what is not known, in words
     */
    public record Group(
            PlacedUnit unit,
            String on,
            double massKg,
            double centreHeightMm,
            List<Spot> outline,
            List<Spot> contact,
            Spot centre,
            @Nullable Spot push,
            String governing,
            List<Line> fixings,
            List<String> missing) {
        public Group {
            outline = List.copyOf(outline);
            contact = List.copyOf(contact);
            fixings = List.copyOf(fixings);
            missing = List.copyOf(missing);
        }
    }

    /**
     * A fixing of a unit, in its own worst case.
     *
     * @param at place in the mounting plane (m); {@code null} of a brace
     * @param bolt such as "M10 8.8"
     * @param into what takes it
     * @param pullN pull (N)
     * @param shearN shear (N)
     * @param under case and direction
     * @param boltUse share of what the bolt bears
     * @param intoUse share of what takes it bears
     * @param torqueNm tightening torque (N·m); {@code null} if the rules set none
     * @param governingPullN pull under the push that governs the unit (N)
     * @param governingShear shear under that push, in the mounting plane (N)
     */
    public record Line(
            String name,
            @Nullable Spot at,
            String bolt,
            String into,
            double pullN,
            double shearN,
            String under,
            double boltUse,
            double intoUse,
            @Nullable Double torqueNm,
            double governingPullN,
            Spot governingShear) {}

    /**
     * A loose unit.
     *
     * @param pushN the force that it must be held against (N)
     * @param under case and direction
     * @param holdN what holds it (N); {@code null} if not stated
     */
    public record Loose(
            PlacedUnit unit,
            double pushN,
            String under,
            @Nullable Double holdN) {}

    public RestraintSheet {
        cases = List.copyOf(cases);
        groups = List.copyOf(groups);
        loose = List.copyOf(loose);
    }

    /** The sheet of a scene, with the bolts that come with the program. */
    public static RestraintSheet of(Scene scene) {
        Holdings holdings = Holdings.of(scene, Fasteners.builtIn());
        List<Group> groups = new ArrayList<>();
        for (Holding holding : holdings.all()) {
            groups.add(group(scene, holding, holdings.pushes()));
        }
        List<Loose> loose = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            if (unit.item().mounting().loose() && !holdings.pushes().isEmpty()) {
                LooseHold.Worst worst = LooseHold.worst(scene, unit, holdings.pushes());
                loose.add(new Loose(
                        unit,
                        worst.forceN(),
                        worst.push().text(),
                        unit.item().mounting().roadHoldN()));
            }
        }
        return new RestraintSheet(scene.rules().loadCases(), groups, loose);
    }

    private static Group group(Scene scene, Holding holding, List<Push> pushes) {
        PlacedUnit unit = holding.unit();
        GroupModel model = new GroupModel(unit, holding.fixings(), holding.load());
        Solved solved = holding.solved();
        Strain worst = solved == null ? null : solved.worst();
        Push governing = worst != null ? worst.push() : solved == null ? null : solved.unheld();
        Box outline = unit.outline(Situation.ON_THE_ROAD);
        String host = unit.place(Situation.ON_THE_ROAD).host();
        return new Group(
                unit,
                host == null
                        ? Wording.surface(model.mount())
                        : scene.unit(host).map(PlacedUnit::name).orElse(host),
                holding.load().massKg(),
                1000 * model.centreHeight(),
                List.of(model.inPlane(outline.low()), model.inPlane(outline.high())),
                model.contact(),
                model.centre(),
                governing == null ? null : model.inPlane(governing),
                governing == null ? "" : governing.text(),
                worst == null ? List.of() : lines(scene, holding, model, pushes, worst.push()),
                holding.missing());
    }

    private static List<Line> lines(Scene scene, Holding holding, GroupModel model, List<Push> pushes, Push governing) {
        List<HeldFixing> fixings = holding.fixings();
        Strain[] worst = new Strain[fixings.size()];
        for (Push push : pushes) {
            GroupForces forces = model.under(push);
            for (int i = 0; i < worst.length; i++) {
                double pull = forces.pullN()[i];
                double shear = forces.shearN(i);
                double bolt =
                        fixings.get(i).boltUse(pull, shear, push.loadCase().basis());
                double use = Math.max(bolt, fixings.get(i).hardPointUse(pull, shear));
                if (worst[i] == null || use > worst[i].use() * (1 + 1e-9)) {
                    worst[i] = new Strain(i, push, pull, shear, bolt >= use, use);
                }
            }
        }
        GroupForces forces = model.under(governing);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < worst.length; i++) {
            lines.add(line(scene, fixings.get(i), worst[i], model, forces));
        }
        return lines;
    }

    private static Line line(Scene scene, HeldFixing fixing, Strain worst, GroupModel model, GroupForces forces) {
        OptionalDouble torque = Torque.of(scene.rules(), fixing);
        Point at = fixing.placed().at();
        int i = worst.fixing();
        return new Line(
                fixing.name(),
                fixing.placed().face() == model.mount() ? model.inPlane(at) : null,
                Fasteners.name(fixing.bolt().thread(), fixing.bolt().grade()),
                fixing.into(),
                worst.pullN(),
                worst.shearN(),
                worst.push().text(),
                fixing.boltUse(
                        worst.pullN(), worst.shearN(), worst.push().loadCase().basis()),
                fixing.hardPointUse(worst.pullN(), worst.shearN()),
                torque.isPresent() ? torque.getAsDouble() : null,
                forces.pullN()[i],
                new Spot(forces.shearS()[i], forces.shearT()[i]));
    }
}
