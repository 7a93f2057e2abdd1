package org.shelterwright.layouts.ledger.floor;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.state.Fill;

/**
 * What presses on the floor through patches of its own: a unit with all that it carries, or a person. Masses are those of the
 * worst case and nominal, with moments from the datum of the body (kg, kg·m). Contents come and go by themselves.
 */
final class Standing {
    /** Most contents of one standing; all their combinations are tried. */
    static final int MOST_CONTENTS = 10;

    private record Content(Fill fill, double leastKg, double fullKg, double x, double y) {}

    private final PlacedUnit owner;
    private final Footing footing;
    private final boolean person;
    private final List<Content> contents = new ArrayList<>();
    private double worst;
    private double worstX;
    private double worstY;
    private double nominal;
    private double nominalX;
    private double nominalY;
    private double off;

    Standing(PlacedUnit owner, Footing footing, boolean person) {
        this.owner = owner;
        this.footing = footing;
        this.person = person;
    }

    void add(double mostKg, double grownKg, Point at) {
        double x = Lengths.metres(at.x());
        double y = Lengths.metres(at.y());
        worst += mostKg;
        worstX += mostKg * x;
        worstY += mostKg * y;
        nominal += grownKg;
        nominalX += grownKg * x;
        nominalY += grownKg * y;
    }

    /** Adds the range of a centre times its mass (kg·m). */
    void addUncertainCentre(double kgM) {
        off += kgM;
    }

    void addContent(Fill fill, double leastKg, double fullKg, Point at) {
        contents.add(new Content(fill, leastKg, fullKg, Lengths.metres(at.x()), Lengths.metres(at.y())));
    }

    PlacedUnit owner() {
        return owner;
    }

    Footing footing() {
        return footing;
    }

    boolean person() {
        return person;
    }

    /** Mass times the range of its centre (kg·m). */
    double off() {
        return off;
    }

    List<Fill> fills() {
        return contents.stream().map(Content::fill).toList();
    }

    /** Whether there are more contents than are tried in all combinations. */
    boolean tooMany() {
        return contents.size() > MOST_CONTENTS;
    }

    int combinations() {
        return tooMany() ? 1 : 1 << contents.size();
    }

    /**
     * Writes what each patch bears (kg) into two arrays.
     *
     * @param combination bit i tells whether content i is full
     * @param from where in the arrays the first patch stands
     */
    void loads(int combination, double[] intoWorst, double[] intoNominal, int from) {
        PressurePlane plane = footing.plane();
        if (plane == null) {
            return;
        }
        double kg = 0;
        double x = 0;
        double y = 0;
        for (int i = 0; i < contents.size(); i++) {
            Content one = contents.get(i);
            double mass = (combination >> i & 1) == 1 ? one.fullKg() : one.leastKg();
            kg += mass;
            x += mass * one.x();
            y += mass * one.y();
        }
        plane.loads(worst + kg, worstX + x, worstY + y, intoWorst, from);
        plane.loads(nominal + kg, nominalX + x, nominalY + y, intoNominal, from);
    }
}
