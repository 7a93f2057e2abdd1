package org.shelterwright.layouts.air;

import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Insulation;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.brief.Weather;

/**
 * Heat passage of the outside of a body: {@code UA = Σ U A} over the outside areas of walls, roof and floor, with the clear
 * areas of the openings taken out of their walls.
 *
 * <p>The sun warms a face as much as outside air that is hotter by {@code α I / h_o − ε ΔR / h_o} (sol-air temperature), with
 * h_o = 17 W/(m²·K) and a loss to the sky of 4 K on the roof, none on walls.
 *
 * <p>Source: ASHRAE Handbook Fundamentals, sol-air temperature; 4 K and 0 K as quoted, h_o from memory.
 *
 * @param wallsWK of the walls without openings (W/K)
 * @param openingsWK of the openings in the walls (W/K)
 * @param roofWK of the roof, with openings in it (W/K)
 * @param floorWK of the floor, with openings in it (W/K)
 */
public record Shell(double wallsWK, double openingsWK, double roofWK, double floorWK, double absorptance) {
    private static final double OUTSIDE_FILM = 17;
    private static final double SKY_LOSS_K = 4;

    static Shell of(Body body, Insulation insulation) {
        Box out = body.outside();
        double x = Lengths.metres(out.x1() - out.x0());
        double y = Lengths.metres(out.y1() - out.y0());
        double z = Lengths.metres(out.z1() - out.z0());
        double openingsM2 = 0;
        for (Opening opening : body.openings()) {
            if (opening.wall().upright()) {
                Box area = opening.area();
                double along = Lengths.metres(Math.max(area.x1() - area.x0(), area.y1() - area.y0()));
                openingsM2 += along * Lengths.metres(area.z1() - area.z0());
            }
        }
        double wallsM2 = Math.max(0, 2 * (x + y) * z - openingsM2);
        return new Shell(
                insulation.wallsU() * wallsM2,
                insulation.openingsU() * openingsM2,
                insulation.roofU() * x * y,
                insulation.floorU() * x * y,
                insulation.absorptance());
    }

    /** Heat passage of all of it (W/K). */
    public double totalWK() {
        return wallsWK + openingsWK + roofWK + floorWK;
    }

    /** Heat that the temperatures alone drive in (W); below zero if it goes out. */
    double throughW(double outsideC, double roomC) {
        return totalWK() * (outsideC - roomC);
    }

    /** Heat that the sun adds (W); no less than none, as at night. */
    double sunW(Weather weather) {
        double perW = absorptance / OUTSIDE_FILM;
        double roofK = Math.max(0, perW * weather.roofSunWm2() - SKY_LOSS_K);
        return roofWK * roofK + (wallsWK + openingsWK) * perW * weather.wallSunWm2();
    }
}
