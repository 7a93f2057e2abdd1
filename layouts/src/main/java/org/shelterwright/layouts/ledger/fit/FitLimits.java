package org.shelterwright.layouts.ledger.fit;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject fit. */
public final class FitLimits {
    private FitLimits() {}

    public static List<Limit> all() {
        return List.of(
                new AllPlaced(),
                new Overlap(),
                new Inside(),
                new ClearOfIntrusions(),
                new SurfaceAllowed(),
                new TurnAllowed(),
                new TouchesSurface(),
                new WallHeight(),
                new RestsOnSupport(),
                new OnHardPoints(),
                new OneBoltPerHole(),
                new SupportRating(),
                new FixingShear(),
                new FixingPullOut(),
                new PullOutPerMetre());
    }
}
