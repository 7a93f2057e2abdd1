package org.shelterwright.layouts.ledger.restraint;

import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.HardPoint;
import org.shelterwright.catalog.fastener.Fastener;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.fit.Landing;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.fit.Rest;
import org.shelterwright.layouts.rules.LoadCase.Basis;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A fixing with what bolt and hard point bear.
 *
 * @param hardPoint rail, raster or zone that takes it; {@code null} if it goes into another unit
 * @param into name of what takes it
 * @param pullOutN what that bears square to its surface (N)
 * @param shearN what that bears along its surface (N)
 */
public record HeldFixing(
        PlacedFixing placed,
        Fastener bolt,
        @Nullable HardPoint hardPoint,
        String into,
        double pullOutN,
        double shearN) {
    /** Classes of bolts that bear more in shear, with the thread in the shear plane (EN 1993-1-8, table 3.4, from memory). */
    private static final Set<String> TOUGH = Set.of("4.6", "5.6", "8.8");
    /** Shear strength of these as a share of their tensile strength. */
    private static final double SHEAR_SHARE = 0.6;
    /** The same of all others: harder, cold-worked or not known. */
    private static final double SHEAR_SHARE_OTHERS = 0.5;

    /** A fixing, or in words what is missing to judge it. */
    record Judged(@Nullable HeldFixing fixing, String missing) {}

    static Judged of(Scene scene, Landing landing, Fasteners fasteners, PlacedUnit unit, PlacedFixing placed) {
        String name = placed.fixing().name() + " of " + unit.name();
        String grade = placed.fixing().grade();
        if (grade == null) {
            return new Judged(null, "the grade of fixing " + name);
        }
        Fastener bolt = fasteners.of(placed.fixing().thread(), grade);
        if (bolt == null) {
            return new Judged(
                    null,
                    "the strength of a bolt " + Fasteners.name(placed.fixing().thread(), grade) + " (fixing " + name
                            + ")");
        }
        return placed.intoHost() ? intoUnit(scene, unit, placed, bolt) : intoBody(landing, name, placed, bolt);
    }

    private static Judged intoBody(Landing landing, String name, PlacedFixing placed, Fastener bolt) {
        HardPoint hardPoint = landing.under(placed);
        if (hardPoint == null) {
            return new Judged(null, "a hard point under fixing " + name);
        }
        return of(
                placed,
                bolt,
                hardPoint,
                hardPoint.name(),
                hardPoint.strength().pullOutN(),
                hardPoint.strength().shearN());
    }

    private static Judged intoUnit(Scene scene, PlacedUnit unit, PlacedFixing placed, Fastener bolt) {
        Optional<Rest> rest = Rest.of(scene, unit, Situation.ON_THE_ROAD);
        if (rest.isEmpty()) {
            return new Judged(null, "what carries " + unit.name());
        }
        var support = rest.get().support();
        String into = support.name() + " of " + support.host().name();
        return of(placed, bolt, null, into, support.pullOutN(), support.shearN());
    }

    private static Judged of(
            PlacedFixing placed,
            Fastener bolt,
            @Nullable HardPoint hardPoint,
            String into,
            @Nullable Double pullOutN,
            @Nullable Double shearN) {
        if (pullOutN == null || shearN == null) {
            return new Judged(null, "the " + (pullOutN == null ? "pull-out" : "shear") + " strength of " + into);
        }
        return new Judged(new HeldFixing(placed, bolt, hardPoint, into, pullOutN, shearN), "");
    }

    public String name() {
        return placed.fixing().name();
    }

    HeldFixing with(Fastener other) {
        return new HeldFixing(placed, other, hardPoint, into, pullOutN, shearN);
    }

    /** Use of the bolt: √((T/T₀)² + (V/V₀)²), with V₀ a share of T₀. */
    double boltUse(double pull, double shear, Basis basis) {
        double tensile = basis == Basis.PROOF ? bolt.proofN() : bolt.ultimateN();
        double along = shear / shearShare(bolt);
        return Math.sqrt(pull * pull + along * along) / tensile;
    }

    /** Use of what takes it: T/T₀ + V/V₀. */
    double hardPointUse(double pull, double shear) {
        return pull / pullOutN + shear / this.shearN;
    }

    private static double shearShare(Fastener bolt) {
        return TOUGH.contains(bolt.grade()) ? SHEAR_SHARE : SHEAR_SHARE_OTHERS;
    }
}
