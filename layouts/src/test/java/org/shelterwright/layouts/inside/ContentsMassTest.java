package org.shelterwright.layouts.inside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Interior;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.PutPiece;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Mode;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.trial.TrialPiece;

/** The mass and the centre of units follow from their content, in both situations; held against a plain sum. */
class ContentsMassTest {
    private static final Checker CHECKER = Checker.standard();

    private static Layout sample(String name) {
        return LayoutFiles.read(Samples.layout(name).orElseThrow()).layout();
    }

    /** Mass with growth and its moments, worked out from the files alone: each unit, each piece by itself. */
    private static double[] sum(Layout layout, Situation situation) {
        double[] sum = new double[4];
        for (UnitSpec spec : layout.brief().units()) {
            Item item = layout.item(spec);
            Pose pose = layout.placements().get(spec.id()).in(situation).pose();
            boolean filled = layout.contents().places().values().stream()
                    .anyMatch(place -> place.unit().equals(spec.id()));
            MassData own = filled ? item.interior().empty() : item.mass();
            add(sum, own, own.centre(), item, pose);
            for (PieceSpec piece : layout.brief().listed().pieces()) {
                PiecePlace place = layout.contents().places().get(piece.id());
                Piece kind = layout.contents().kinds().get(piece.kind());
                boolean out = situation == Situation.ON_STATION && piece.takenOut();
                if (place != null && place.unit().equals(spec.id()) && !out) {
                    add(sum, kind.mass(), at(kind, place, item), item, pose);
                }
                String where = out && place != null
                        ? layout.brief()
                                .listed()
                                .task(piece.task())
                                .orElseThrow()
                                .unit()
                        : null;
                if (spec.id().equals(where)) {
                    add(sum, kind.mass(), top(item), item, pose);
                }
            }
        }
        return sum;
    }

    private static Point top(Item item) {
        return item.supports().stream()
                .filter(support -> !support.under())
                .findFirst()
                .map(support ->
                        support.area().at(support.height(), support.height()).centre())
                .orElse(new Point(
                        item.size().x() / 2, item.size().y() / 2, item.size().z()));
    }

    /** Racks of the samples look along x of their item. */
    private static Point at(Piece kind, PiecePlace place, Item item) {
        Point own = kind.mass().centre();
        if (place.at() != null) {
            Point turned = place.posture().apply(own);
            return place.at().plus(turned);
        }
        RackBay bay = item.bays().get(0);
        int x = bay.at().x() - (kind.size().x() - kind.rack().frontDepth()) + own.x();
        int y = bay.at().y() - kind.size().y() / 2 + own.y();
        return new Point(x, y, bay.at().z() + (place.lowest() - 1) * 44_450 + own.z());
    }

    private static void add(double[] sum, MassData mass, Point centre, Item item, Pose pose) {
        double share = mass.growthShare() != null
                ? mass.growthShare()
                : switch (mass.basis()) {
                    case WEIGHED -> 0.02;
                    case ESTIMATED -> 0.2;
                    default -> 0.1;
                };
        double kg = mass.massKg() * (1 + share);
        Point at = pose.apply(centre, item.size());
        sum[0] += kg;
        sum[1] += kg * at.x() / 1e6;
        sum[2] += kg * at.y() / 1e6;
        sum[3] += kg * at.z() / 1e6;
    }

    private static double[] ofUnits(Scene scene, Situation situation) {
        double[] sum = new double[4];
        for (PlacedUnit unit : scene.units()) {
            add(sum, unit.mass(situation), unit.mass(situation).centre(), unit.item(), unit.pose(situation));
        }
        return sum;
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void theMassesOfTheUnitsAreThoseOfAPlainSum(String name) {
        Layout layout = sample(name);
        Scene scene = CHECKER.scene(layout);

        for (Situation situation : Situation.values()) {
            double[] plain = sum(layout, situation);
            double[] found = ofUnits(scene, situation);
            assertThat(found[0]).as("%s, mass", situation).isCloseTo(plain[0], within(1e-6));
            for (int i = 1; i < 4; i++) {
                assertThat(found[i]).as("%s, moment %d", situation, i).isCloseTo(plain[i], within(1e-3));
            }
        }
        assertThat(sum(layout, Situation.ON_STATION)[0]).isNotEqualTo(sum(layout, Situation.ON_THE_ROAD)[0]);
    }

    @Test
    void movingAPieceToTheOtherRackMovesItsMomentThere() {
        Layout layout = sample("river-post");
        Layout emptied = layout.withContents(layout.contents().without("blank-2-5"));
        PiecePlace before = emptied.contents().places().get("switch-1");
        PiecePlace gap = layout.contents().places().get("blank-2-5");
        Layout moved = new PutPiece(PiecePlace.inRack("switch-1", "rack-2", gap.place(), gap.lowest())).apply(emptied);

        double[] old = ofUnits(CHECKER.scene(emptied), Situation.ON_THE_ROAD);
        double[] now = ofUnits(CHECKER.scene(moved), Situation.ON_THE_ROAD);
        double[] plainOld = sum(emptied, Situation.ON_THE_ROAD);
        double[] plainNow = sum(moved, Situation.ON_THE_ROAD);

        assertThat(before.unit()).isEqualTo("rack-1");
        assertThat(now[0]).isCloseTo(old[0], within(1e-9));
        for (int i = 1; i < 4; i++) {
            assertThat(now[i] - old[i]).isCloseTo(plainNow[i] - plainOld[i], within(1e-3));
        }
        assertThat(Math.abs(now[1] - old[1])).isGreaterThan(1);
    }

    /**
     * The centre of the whole layout shifts by m·d/M: the moments that its load states state change by the grown mass of the piece
     * times its way, worked out from the files alone, and the mass stays.
     */
    @Test
    void theCentreOfTheLayoutFollowsAPieceToTheOtherRack() {
        Layout layout = sample("river-post");
        Layout emptied = layout.withContents(layout.contents().without("blank-2-5"));
        PiecePlace gap = layout.contents().places().get("blank-2-5");
        Layout moved = new PutPiece(PiecePlace.inRack("switch-1", "rack-2", gap.place(), gap.lowest())).apply(emptied);
        Influence[] moments = {Influence.MOMENT_X, Influence.MOMENT_Y, Influence.MOMENT_Z};

        for (Situation situation : Situation.values()) {
            Mode mode = new Mode(situation, false);
            LoadStates before = LoadStates.of(CHECKER.scene(emptied));
            LoadStates after = LoadStates.of(CHECKER.scene(moved));
            double[] plainOld = sum(emptied, situation);
            double[] plainNow = sum(moved, situation);
            Quantity mass = Quantity.ofBody(Influence.MASS);
            double kg = before.nominal(mass, mode, false);

            assertThat(after.nominal(mass, mode, false)).isCloseTo(kg, within(1e-9));
            for (int i = 0; i < 3; i++) {
                Quantity moment = Quantity.ofBody(moments[i]);
                double shift = (after.nominal(moment, mode, false) - before.nominal(moment, mode, false)) / kg;
                assertThat(shift)
                        .as("%s, axis %d", situation, i)
                        .isCloseTo((plainNow[i + 1] - plainOld[i + 1]) / kg, within(1e-6));
            }
            assertThat(Math.abs(plainNow[1] - plainOld[1])).isGreaterThan(1);
        }
    }

    @Test
    void theLoadStatesOfTheLayoutCountTheContent() {
        Layout layout = sample("river-post");
        Scene scene = CHECKER.scene(layout);
        Layout bare = layout.withAsked(layout.brief().withInventory(null), layout.parts());
        Scene withoutPieces = CHECKER.scene(bare);
        Quantity mass = Quantity.ofBody(Influence.MASS);

        for (Situation situation : Situation.values()) {
            Mode mode = new Mode(situation, false);
            double difference = LoadStates.of(scene).nominal(mass, mode, false)
                    - LoadStates.of(withoutPieces).nominal(mass, mode, false);
            assertThat(difference)
                    .as("%s", situation)
                    .isCloseTo(sum(layout, situation)[0] - sum(bare, situation)[0], within(1e-6));
        }
    }

    @Test
    void aUnitWhoseEmptyMassIsNotKnownHasNoMass() {
        Piece lamp = TrialPiece.loose("lamp", 100, 100, 100).build();
        Stowage place = new Stowage("box", Box.ofMm(0, 0, 0, 300, 300, 300), 5);
        Scene scene = Trial.in(TrialBody.of(3000, 2000, 2000))
                .floor("crate", TrialItem.of("crate", 300, 300, 300).stowage(place), 0, 0)
                .piece(
                        PieceSpec.of("lamp", "Lamp", "lamp"),
                        lamp,
                        PiecePlace.stowed("lamp", "crate", "box", Point.ORIGIN, Posture.AS_IS))
                .scene();

        assertThat(scene.units().get(0).mass(Situation.ON_THE_ROAD).massKg()).isNull();
        assertThat(LoadStates.of(scene).gaps())
                .extracting(gap -> gap.sentence())
                .contains("Crate has no mass. Give massKg in the interior of item crate.");
    }

    @Test
    void aPieceWithoutACentreLiesInItsMiddleWithinHalfItsLength() {
        Piece bag = new Piece(
                "bag",
                "Bag",
                Size.ofMm(200, 100, 100),
                new MassData(10.0, null, MassBasis.WEIGHED, 0.0, 0.0, null),
                null,
                new Loose(false, false, null, null, null, Urgency.LATER, 0),
                null,
                null);
        Stowage place = new Stowage("box", Box.ofMm(0, 0, 0, 300, 300, 300), 50);
        MassData empty = new MassData(10.0, Point.ofMm(150, 150, 150), MassBasis.WEIGHED, 0.0, 0.0, null);
        Scene scene = Trial.in(TrialBody.of(3000, 2000, 2000))
                .floor(
                        "crate",
                        TrialItem.of("crate", 300, 300, 300).stowage(place).interior(new Interior(empty, List.of())),
                        0,
                        0)
                .piece(
                        PieceSpec.of("bag", "Bag", "bag"),
                        bag,
                        PiecePlace.stowed("bag", "crate", "box", Point.ORIGIN, Posture.AS_IS))
                .scene();

        MassData mass = scene.units().get(0).mass(Situation.ON_THE_ROAD);

        assertThat(mass.massKg()).isEqualTo(20);
        assertThat(mass.centre()).isEqualTo(Point.ofMm(125, 100, 100));
        assertThat(mass.centreUncertainty()).isEqualTo(50_000);
    }
}
