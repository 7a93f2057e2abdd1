package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.transit.Outline;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.scene.CurveThrow;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * How a piece on a car lies to the outline of a way, where it is tightest.
 *
 * @param clearance to the outline after throw, least over all solids (µm); below 0 where it fouls
 * @param throwUm how far that section is thrown off the track's middle, beyond what the outline allows (µm)
 * @param upward whether the upper edge is what is tight, because it is above the outline
 * @param left whether the left side is the tight one
 * @param at place along the car (µm)
 * @param halfWidth of the piece there, without throw (µm)
 * @param allowed half width of the outline there (µm); its height if {@code upward}
 * @param low lower edge above rail (µm)
 * @param high upper edge above rail (µm)
 * @param solid the cuboid in the frame of the car
 */
public record OutlineFit(
        int clearance,
        int throwUm,
        boolean upward,
        boolean left,
        int at,
        int halfWidth,
        int allowed,
        int low,
        int high,
        Box solid) {
    /**
     * The tightest place of a piece on a car.
     *
     * @param low lowest floor of the car above rail or ground (µm)
     * @param high highest floor (µm)
     */
    public static Optional<OutlineFit> of(LegScene leg, TransitCar car, PlacedPiece piece, int low, int high) {
        Outline outline = leg.outline().orElse(null);
        if (outline == null) {
            return Optional.empty();
        }
        OutlineFit worst = null;
        for (Box solid : piece.solids()) {
            for (int x : sections(car, solid)) {
                OutlineFit fit = at(leg, car, outline, solid, x, low, high);
                if (worst == null || fit.clearance() < worst.clearance()) {
                    worst = fit;
                }
            }
        }
        return Optional.ofNullable(worst);
    }

    /** Both ends, and the middle between the pins if it lies between them: the throw is greatest at one of them. */
    private static List<Integer> sections(TransitCar car, Box solid) {
        if (car.wheels().size() == 2) {
            int middle = (car.wheels().get(0).x() + car.wheels().get(1).x()) / 2;
            if (middle > solid.x0() && middle < solid.x1()) {
                return List.of(solid.x0(), middle, solid.x1());
            }
        }
        return List.of(solid.x0(), solid.x1());
    }

    private static OutlineFit at(
            LegScene leg, TransitCar car, Outline outline, Box solid, int x, int lowFloor, int highFloor) {
        int low = lowFloor + solid.z0();
        int high = highFloor + solid.z1();
        int middle = car.deck().width() / 2;
        int left = solid.y1() - middle;
        int right = middle - solid.y0();
        int half = Math.max(left, right);
        int off = thrown(leg, car, outline, x);
        if (high > outline.highest()) {
            return new OutlineFit(
                    outline.highest() - high, off, true, left >= right, x, half, outline.highest(), low, high, solid);
        }
        int allowed = Math.max(0, outline.halfWidth(Math.max(low, outline.lowest()), high));
        return new OutlineFit(allowed - half - off, off, false, left >= right, x, half, allowed, low, high, solid);
    }

    /** How far a section is thrown off the track's middle in the least curve of a leg, beyond what the outline allows (µm). */
    public static int thrown(LegScene leg, TransitCar car, Outline outline, int x) {
        Double radius = leg.leg().curveM();
        if (radius == null || car.wheels().size() != 2 || outline.curveM() == null) {
            return 0;
        }
        double metres = CurveThrow.metres(car.wheels(), x, radius);
        return Math.max(0, (int) Math.ceil(metres * Lengths.M) - outline.allowedThrow());
    }
}
