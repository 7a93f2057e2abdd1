package org.shelterwright.layouts.ledger.access;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.PlacedZone;
import org.shelterwright.layouts.scene.Scene;

/**
 * Working space about electric equipment: free depth before each served side, over the greater of the set width and the
 * width of the equipment, from the floor up to the greater of the set headroom and the top of the equipment &gt;= the
 * depth of the table, on station. One row for each service zone of a power unit.
 *
 * <p>The depth goes by the voltage to earth and by what faces the live parts: up to 150 V one depth; from 151 to 600 V that to
 * earthed parts (condition B), or to live ones (condition C) if the front of another power unit faces. Condition A, neither
 * earthed nor live, is not taken, since walls and units are metal. Sides other than the front are taken to be worked at
 * when dead. What is above or below the equipment may stand out before it by a set length.
 *
 * <p>Source: the rule set of the brief. Published values: 29 CFR 1910.303(g)(1) and Table S-1. Figures: {@link
 * Figure#ELECTRIC_VOLTAGE} and those that begin like it.
 */
final class ElectricSpace extends NamedLimit implements Limit.OfWhole {
    private static final double LOW_V = 150;
    private static final double HIGHEST_V = 600;

    ElectricSpace() {
        super(
                "access.electric-space",
                Subject.ACCESS,
                "Working space at electric equipment",
                Severity.HARD,
                Source.seen("29 CFR 1910.303", "(g)(1), working space about electric equipment"),
                "No rule set asks for it, or no item of the kind power-unit has a service zone.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        if (scene.rules().rule(Figure.ELECTRIC_DEPTH_LOW).isEmpty()) {
            return;
        }
        boolean any = false;
        for (PlacedUnit unit : scene.units()) {
            for (PlacedZone zone : served(unit)) {
                assess(scene, rows, zone);
                any = true;
            }
        }
        Optional<Rule> headroom = scene.rules().rule(Figure.ELECTRIC_HEADROOM);
        if (any && headroom.isPresent()) {
            headroom(scene, rows, headroom.get());
        }
    }

    private static List<PlacedZone> served(PlacedUnit unit) {
        return unit.item().kind() != ItemKind.POWER_UNIT
                ? List.of()
                : unit.zones(Situation.ON_STATION).stream()
                        .filter(zone -> zone.purpose() == Purpose.SERVICE)
                        .toList();
    }

    private void headroom(Scene scene, Rows rows, Rule rule) {
        int there = scene.body().inside().z();
        int needed = Floor.micrometres(rule.value());
        RowDraft draft = rows.draft(this, "Headroom at electric equipment").source(rule.source());
        if (there < needed) {
            draft.mend("Use a higher body.");
        }
        rows.add(draft.atLeast(needed / 1e3, there / 1e3, "mm", "The body is " + Wording.mm(there) + " high inside."));
    }

    private void assess(Scene scene, Rows rows, PlacedZone zone) {
        PlacedUnit unit = zone.owner();
        Box outline = unit.outline(Situation.ON_STATION);
        Face face = FacingSpace.sideOf(outline, zone.box());
        boolean live = unit.pose(Situation.ON_STATION).apply(Face.FRONT) == face;
        FacingSpace space = space(scene, unit, outline, face);
        Optional<Figure> asked = live ? depth(scene.rules(), facesLiveParts(space, face)) : side();
        RowDraft draft = rows.draft(this, "Working space at " + unit.name() + ": " + zone.name());
        if (asked.isEmpty()) {
            rows.add(draft.units(unit)
                    .mend("Let a qualified person state the working depth for this voltage.")
                    .notAssessed("The table for working spaces ends at 600 V to earth; more is set."));
            return;
        }
        Optional<Rule> rule = scene.rules().rule(asked.get());
        if (rule.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, asked.get()));
            return;
        }
        rows.add(FacingRow.of(
                draft.source(rule.get().source()),
                unit,
                space,
                Floor.micrometres(rule.get().value()),
                unit.name(),
                why(asked.get())));
    }

    private static FacingSpace space(Scene scene, PlacedUnit unit, Box outline, Face face) {
        Axis across = face.axis() == Axis.X ? Axis.Y : Axis.X;
        Rules rules = scene.rules();
        int width = Math.max(outline.extent(across), Floor.micrometres(rules.valueOr(Figure.ELECTRIC_WIDTH, 0)));
        int top = Math.max(outline.z1(), Floor.micrometres(rules.valueOr(Figure.ELECTRIC_HEADROOM, 0)));
        Box flat = outline.face(face);
        Box front = new Box(flat.x0(), flat.y0(), 0, flat.x1(), flat.y1(), top);
        int out = Floor.micrometres(rules.valueOr(Figure.ELECTRIC_PROJECTION, 0));
        return FacingSpace.before(
                scene, unit, face, front, width, (other, solid) -> overOrUnder(solid, outline, face, across, out));
    }

    private static boolean overOrUnder(Box solid, Box outline, Face face, Axis across, int out) {
        int beyond = face.sign() > 0
                ? solid.high(face.axis()) - outline.high(face.axis())
                : outline.low(face.axis()) - solid.low(face.axis());
        return beyond <= out
                && solid.gap(outline, Axis.Z) >= 0
                && solid.gap(outline, across) < 0
                && solid.gap(outline, face.axis()) < 0;
    }

    private static boolean facesLiveParts(FacingSpace space, Face face) {
        PlacedUnit facing = space.unit();
        return facing != null
                && facing.item().kind() == ItemKind.POWER_UNIT
                && facing.pose(Situation.ON_STATION).apply(Face.FRONT) == face.opposite();
    }

    private static Optional<Figure> side() {
        return Optional.of(Figure.ELECTRIC_DEPTH_SIDE);
    }

    private static Optional<Figure> depth(Rules rules, boolean facesLiveParts) {
        Optional<Rule> voltage = rules.rule(Figure.ELECTRIC_VOLTAGE);
        if (voltage.isEmpty()) {
            return Optional.of(Figure.ELECTRIC_VOLTAGE);
        }
        double volts = voltage.get().value();
        if (volts > HIGHEST_V) {
            return Optional.empty();
        }
        return Optional.of(
                volts <= LOW_V
                        ? Figure.ELECTRIC_DEPTH_LOW
                        : facesLiveParts ? Figure.ELECTRIC_DEPTH_LIVE : Figure.ELECTRIC_DEPTH_EARTHED);
    }

    private static String why(Figure depth) {
        return switch (depth) {
            case ELECTRIC_DEPTH_LOW -> "up to 150 V to earth";
            case ELECTRIC_DEPTH_EARTHED -> "151 to 600 V to earth, facing earthed parts";
            case ELECTRIC_DEPTH_LIVE -> "151 to 600 V to earth, facing live parts";
            default -> "worked at when dead";
        };
    }
}
