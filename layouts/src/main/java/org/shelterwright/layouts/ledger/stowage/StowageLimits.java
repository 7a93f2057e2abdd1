package org.shelterwright.layouts.ledger.stowage;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject stowage. */
public final class StowageLimits {
    private StowageLimits() {}

    public static List<Limit> all() {
        return List.of(
                new PiecesStowed(),
                new InsidePlace(),
                new NoOverlap(),
                new RestsWell(),
                new NothingOnFragile(),
                new UprightKept(),
                new PlaceMass(),
                new GripRoom(),
                new GoodsApart(),
                new Temperature(),
                new AtHand(),
                new FirstUsedNearest(),
                new OnTaskSide(),
                new PlaceLocked());
    }
}
