package org.shelterwright.layouts.ledger.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Units on and under others: rest on a support, and within its rating. */
class SupportLimitsTest {
    private final TrialItem table = TrialItem.of("table", 800, 1600, 750)
            .solid(Box.ofMm(0, 0, 720, 800, 1600, 750))
            .solid(Box.ofMm(0, 0, 0, 800, 50, 720))
            .support("top", Rect.ofMm(0, 0, 800, 1600), 750, false, 50.0)
            .support("underside", Rect.ofMm(0, 50, 800, 1600), 720, true, 12.0);
    private final TrialItem device = TrialItem.of("device", 400, 300, 200)
            .on(Surface.ON_UNIT, Surface.UNDER_UNIT)
            .mass(20.0, Point.ORIGIN);
    private final TrialItem crate = TrialItem.of("crate", 600, 400, 300)
            .on(Surface.FLOOR, Surface.ON_UNIT)
            .stacking(30)
            .mass(15.0, Point.ORIGIN);

    private Trial withTable() {
        return Trial.in(TrialBody.of(4000, 2000, 2000)).floor("table", table, 1000, 0);
    }

    @Test
    void aUnitWhollyOnASupportRests() {
        Row row = withTable()
                .put("device", device, Trial.on("table", 1400, 1300, 750))
                .rows(new RestsOnSupport())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("Every unit on or under another rests on a support of it.");
    }

    @Test
    void aUnitBeyondTheEdgeSaysByHowMuch() {
        Row row = withTable()
                .put("device", device, Trial.on("table", 1425, 0, 750))
                .rows(new RestsOnSupport())
                .get(0);

        assertThat(row.demand()).isEqualTo(25.0);
        assertThat(row.finding()).isEqualTo("Device reaches 25 mm beyond the support \"top\" of Table.");
        assertThat(row.mend())
                .isEqualTo("Put Device at 750 mm above the floor, within x 1000 mm to 1800 mm and y 0 mm to 1600 mm.");
    }

    @Test
    void eachSideOfASupportBinds() {
        assertThat(beyond(990, 0)).isEqualTo(10.0);
        assertThat(beyond(1400, 1305)).isEqualTo(5.0);
        assertThat(beyond(1000, 0)).isZero();
        assertThat(beyond(1200, -7)).isEqualTo(7.0);
    }

    private double beyond(int x, int y) {
        Double demand = withTable()
                .put("device", device, Trial.on("table", x, y, 750))
                .rows(new RestsOnSupport())
                .get(0)
                .demand();
        return demand == null ? -1 : demand;
    }

    @Test
    void aUnitThatFloatsOrSinksSaysSo() {
        Row floats = withTable()
                .put("device", device, Trial.on("table", 1000, 0, 760))
                .rows(new RestsOnSupport())
                .get(0);
        Row sinks = withTable()
                .put("device", device, Trial.on("table", 1000, 0, 745))
                .rows(new RestsOnSupport())
                .get(0);

        assertThat(floats.finding()).isEqualTo("Device lies 10 mm off the support \"top\" of Table.");
        assertThat(sinks.finding()).isEqualTo("Device lies 5 mm into the support \"top\" of Table.");
        assertThat(sinks.demand()).isEqualTo(5.0);
    }

    @Test
    void aUnitUnderATableHangsFromItsUnderside() {
        Row rests = withTable()
                .put("device", device, Trial.under("table", 1000, 50, 520))
                .rows(new RestsOnSupport())
                .get(0);
        Row off = withTable()
                .put("device", device, Trial.under("table", 1000, 50, 510))
                .rows(new RestsOnSupport())
                .get(0);

        assertThat(rests.verdict()).isEqualTo(Verdict.MET);
        assertThat(off.finding()).isEqualTo("Device lies 10 mm off the support \"underside\" of Table.");
    }

    @Test
    void onlyWhatReachesUpTouchesTheUnderside() {
        // given a unit under the table whose lower part is wider than the underside, but not its top
        TrialItem stepped = TrialItem.of("stepped", 900, 300, 200)
                .on(Surface.UNDER_UNIT)
                .solid(Box.ofMm(0, 0, 0, 900, 300, 100))
                .solid(Box.ofMm(0, 0, 100, 400, 300, 200));
        Row rests = withTable()
                .put("stepped", stepped, Trial.under("table", 1000, 50, 520))
                .rows(new RestsOnSupport())
                .get(0);
        Row beyond = withTable()
                .put("stepped", stepped, Trial.under("table", 1500, 50, 520))
                .rows(new RestsOnSupport())
                .get(0);

        assertThat(rests.verdict()).isEqualTo(Verdict.MET);
        assertThat(beyond.demand()).isEqualTo(100.0);
    }

    @Test
    void theSupportThatSuitsBestIsTaken() {
        TrialItem shelves = TrialItem.of("shelves", 800, 800, 1600)
                .solid(Box.ofMm(0, 0, 0, 800, 800, 20))
                .support("lower", Rect.ofMm(0, 0, 800, 800), 500, false, 50.0)
                .support("upper", Rect.ofMm(0, 0, 800, 800), 1000, false, 5.0);
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("shelves", shelves, 0, 0)
                .put("device", device, Trial.on("shelves", 0, 0, 1000));

        assertThat(trial.rows(new RestsOnSupport()).get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(trial.rows(new SupportRating()).get(0).title()).isEqualTo("Load on upper of Shelves");
    }

    @Test
    void supportsTurnWithTheirHost() {
        Place turned = new Place(Surface.ON_UNIT, "table", new Pose(Point.ofMm(2300, 0, 750), QuarterTurn.R0));
        Trial trial = Trial.in(TrialBody.of(4000, 2000, 2000))
                .put("table", table, Trial.onFloor(1000, 0, QuarterTurn.R90))
                .put("device", device, turned);

        // turned by 90°, the top reaches from x 1000 to 2600
        assertThat(trial.rows(new RestsOnSupport()).get(0).demand()).isEqualTo(100.0);
    }

    @Test
    void aHostWithoutPlaceOrSupportIsNamed() {
        TrialItem plain = TrialItem.of("plain", 800, 800, 500);
        Row noSupport = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("plain", plain, 0, 0)
                .put("device", device, Trial.on("plain", 0, 0, 500))
                .rows(new RestsOnSupport())
                .get(0);
        Row noUnderside = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("plain", plain, 0, 0)
                .put("device", device, Trial.under("plain", 0, 0, 300))
                .rows(new RestsOnSupport())
                .get(0);
        Row noPlace = Trial.in(TrialBody.of(4000, 2000, 2000))
                .toPlace("plain", plain)
                .put("device", device, Trial.on("plain", 0, 0, 500))
                .rows(new RestsOnSupport())
                .get(0);

        assertThat(noSupport.finding()).isEqualTo("Device is mounted on Plain, which has no support on its top.");
        assertThat(noUnderside.finding())
                .isEqualTo("Device is mounted under Plain, which has no support on its underside.");
        assertThat(noPlace.finding()).isEqualTo("Device is mounted on \"plain\", which has no place yet.");
        assertThat(noPlace.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(noPlace.mend()).isEqualTo("Mount it on something else.");
    }

    @Test
    void unitsMountedInACircleAreFound() {
        Row row = Trial.in(TrialBody.of(4000, 2000, 2000))
                .put("one", crate, Trial.on("two", 0, 0, 300))
                .put("two", crate, Trial.on("one", 0, 0, 300))
                .rows(new RestsOnSupport())
                .get(0);

        assertThat(row.finding()).isEqualTo("One is mounted on Two, which in the end is mounted on it.");
    }

    @Test
    void aChainCountsOnEverySupportBelow() {
        // given 15 kg on 15 kg on a table top for 50 kg
        var rows = withTable()
                .put("lower", crate, Trial.on("table", 1000, 0, 750))
                .put("upper", crate, Trial.on("lower", 1000, 0, 1050))
                .rows(new SupportRating());

        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).title()).isEqualTo("Load on top of Table");
        assertThat(rows.get(0).demand()).isEqualTo(30.0);
        assertThat(rows.get(0).capacity()).isEqualTo(50.0);
        assertThat(rows.get(0).nominal()).isEqualTo(30.0);
        assertThat(rows.get(0).units()).containsExactly("table", "lower");
        assertThat(rows.get(0).state()).isEqualTo("always");
        assertThat(rows.get(0).finding()).isEqualTo("The support \"top\" of Table carries Lower.");
        assertThat(rows.get(1).title()).isEqualTo("Load on top of Lower");
        assertThat(rows.get(1).demand()).isEqualTo(15.0);
        assertThat(rows.get(1).capacity()).isEqualTo(30.0);
    }

    @Test
    void guestsOfOneSupportAddUpWithTheirTanksFull() {
        Row row = withTable()
                .put("one", device.tank(1, 5), Trial.on("table", 1000, 0, 750))
                .put("two", device, Trial.on("table", 1400, 0, 750))
                .rows(new SupportRating())
                .get(0);

        assertThat(row.demand()).isEqualTo(50.0);
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.mend()).isNull();
    }

    @Test
    void anOverloadedUndersideIsBroken() {
        Row row = withTable()
                .put("device", device, Trial.under("table", 1000, 50, 520))
                .rows(new SupportRating())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.capacity()).isEqualTo(12.0);
        assertThat(row.mend()).isEqualTo("Put something lighter on it, or choose a stronger support.");
    }

    @Test
    void theHeavierSituationGoverns() {
        Row road = withTable()
                .put("device", device, Trial.onFloor(0, 0, QuarterTurn.R0), Trial.on("table", 1000, 0, 750), Pin.NONE)
                .rows(new SupportRating())
                .get(0);
        Row station = withTable()
                .put("device", device, Trial.on("table", 1000, 0, 750), Trial.onFloor(0, 0, QuarterTurn.R0), Pin.NONE)
                .put("other", crate, Trial.on("table", 1000, 400, 750))
                .rows(new SupportRating())
                .get(0);

        assertThat(road.state()).isEqualTo("on the road");
        assertThat(station.state()).isEqualTo("on station");
        assertThat(station.demand()).isEqualTo(35.0);
    }

    @Test
    void missingRatingsAndMassesAreNotAssessed() {
        TrialItem unrated =
                TrialItem.of("unrated", 800, 800, 500).support("top", Rect.ofMm(0, 0, 800, 800), 500, false, null);
        TrialItem unknown =
                TrialItem.of("unknown", 400, 300, 200).on(Surface.ON_UNIT).mass(null, null);
        Row noRating = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("host", unrated, 0, 0)
                .put("device", device, Trial.on("host", 0, 0, 500))
                .rows(new SupportRating())
                .get(0);
        Row noMass = withTable()
                .put("unknown", unknown, Trial.on("table", 1000, 0, 750))
                .rows(new SupportRating())
                .get(0);

        assertThat(noRating.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(noRating.finding()).isEqualTo("The rating of the support \"top\" of Host is not stated.");
        assertThat(noRating.mend()).isEqualTo("State the rating of the support in item unrated.");
        assertThat(noMass.finding()).isEqualTo("The mass of Unknown is not stated.");
        assertThat(noMass.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void withoutGuestsNothingIsCarried() {
        assertThat(withTable().rows(new SupportRating()).get(0).finding())
                .isEqualTo("No unit stands on or hangs under a support of another.");
    }
}
