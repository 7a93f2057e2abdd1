package org.shelterwright.app.desk.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.StowUnit;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.scene.PlacedUnit;

class NeighboursTest {
    private static final String CHAIR = "folding-chair";

    private final Session session = new Session(Checker.standard(), HandPost.layout());

    @Test
    void distancesAreFromTheFacesOfWhatIsThereInTheSituation() {
        Map<QuarterTurn, Integer> toRightWall = new EnumMap<>(QuarterTurn.class);
        for (QuarterTurn turn : QuarterTurn.values()) {
            session.apply(new StowUnit(CHAIR, new Place(Surface.FLOOR, null, new Pose(Point.ofMm(600, 900, 0), turn))));
            PlacedUnit chair = session.now().scene().unit(CHAIR).orElseThrow();
            Box folded = chair.solids(Situation.ON_THE_ROAD).stream()
                    .reduce(Box::hull)
                    .orElseThrow();

            for (Clearance one : Neighbours.of(session.now().scene(), chair, Situation.ON_THE_ROAD)) {
                int face = one.high() ? folded.high(one.axis()) : folded.low(one.axis());
                assertThat(one.from().along(one.axis()))
                        .as(turn + ", " + one.words())
                        .isEqualTo(face);
            }
            toRightWall.put(turn, folded.y0());
        }
        assertThat(toRightWall.values())
                .as("the folded chair is thin: its faces lie elsewhere turn by turn")
                .contains(900_000, 1_250_000);
    }
}
