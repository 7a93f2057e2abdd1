package org.shelterwright.layouts.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.file.JourneyFiles;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.transport.scene.JourneyParts;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/** The sample Road-Rail Move, with vehicles and Water Lab set onto its wagons by hand. */
public final class SampleJourney {
    public static final Catalog CATALOG = BuiltInCatalog.read();

    private SampleJourney() {}

    public static OpenedJourney opened() {
        return open(Samples.journey("road-rail-move"));
    }

    public static OpenedJourney open(InputFile file) {
        return JourneyFiles.read(file, CATALOG, SampleJourney::layout, TransportRig.CHECKER.ruleSets());
    }

    public static InputFile layout(String from) {
        return Samples.layout(from.substring("sample:".length())).orElseThrow();
    }

    public static JourneyScene loaded() {
        return loadedOn(car -> car);
    }

    /** The same on cars that a test has changed. */
    public static JourneyScene loadedOn(UnaryOperator<TransitCar> changed) {
        OpenedJourney opened = opened();
        List<Load> loads = new ArrayList<>();
        for (Load load : opened.journey().loads()) {
            loads.add(
                    switch (load.id()) {
                        case "wagon-1" ->
                            load.withStands(
                                    List.of(stand("river-post", 700, 160), stand("generator-trailer", 8_900, 470)));
                        case "wagon-2" -> load.withStands(List.of(stand("water-lab", 6_221, 151)));
                        default -> load;
                    });
        }
        Transit transit = opened.parts().transit();
        JourneyParts parts = new JourneyParts(
                new Transit(
                        transit.cars().stream().map(changed).toList(),
                        transit.outlines(),
                        transit.lashings(),
                        transit.lineCategories(),
                        transit.frictions(),
                        transit.wagonClasses()),
                opened.parts().layouts());
        return TransportRig.CHECKER.scene(opened.journey().withLoads(loads), parts);
    }

    private static Stand stand(String what, int x, int y) {
        return new Stand(what, Pose.at(Point.ofMm(x, y, 0)), true);
    }
}
