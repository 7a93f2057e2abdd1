package org.shelterwright.layouts.transport.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Contents;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Mode;
import org.shelterwright.layouts.state.VehicleLoads;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.SampleJourney;

/** What a shelter weighs on a journey is what its mass statement says, with all that is in it and all its cables. */
class LayoutPartTest {
    private static final Mode ROAD = new Mode(Situation.ON_THE_ROAD, false);

    private static Layout sample(String name) {
        return LayoutFiles.read(Samples.layout(name).orElseThrow()).layout();
    }

    private static double statedKg(Layout layout) {
        Scene scene = Checker.standard()
                .scene(layout.withAsked(layout.brief().withCrew(0).withOccupants(List.of()), layout.parts()));
        return LoadStates.of(scene)
                .nominal(VehicleLoads.carrier(scene).orElseThrow().ownMass(), ROAD, true);
    }

    private static double travellingKg(Layout layout) {
        Double kg = shape(layout, Piece.Part.VEHICLE).massKg();
        assertThat(kg).isNotNull();
        return kg;
    }

    private static Shape shape(Layout layout, Piece.Part part) {
        Piece piece = new Piece("p", "P", "sample:x", part, null, null, List.of(), List.of(), null);
        LayoutPart travelling = new LayoutPart(piece, layout, Checker.standard().ruleSets());
        return part == Piece.Part.BODY ? travelling.body() : travelling.vehicle();
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void aVehicleWeighsWhatItsStatementSays(String name) {
        Layout layout = sample(name);

        assertThat(travellingKg(layout)).isCloseTo(statedKg(layout), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"river-post", "water-lab"})
    void whatIsInItAndItsCablesCount(String name) {
        Layout layout = sample(name);
        Layout without = layout.withRoutes(Map.of());

        assertThat(layout.routes()).isNotEmpty();
        assertThat(travellingKg(layout) - travellingKg(without))
                .isNotZero()
                .isCloseTo(statedKg(layout) - statedKg(without), within(1e-6));
    }

    @Test
    void piecesInRacksAndLockersTravelAlong() {
        Layout layout = sample("river-post");
        Layout bare = layout.withContents(Contents.NONE);

        assertThat(travellingKg(layout) - travellingKg(bare))
                .isNotZero()
                .isCloseTo(statedKg(layout) - statedKg(bare), within(1e-6));
    }

    @Test
    void theSampleJourneyCarriesTheSampleLayouts() {
        Double kg = SampleJourney.loaded().shape("river-post").orElseThrow().massKg();

        assertThat(kg).isCloseTo(statedKg(sample("river-post")), within(1e-6));
    }
}
