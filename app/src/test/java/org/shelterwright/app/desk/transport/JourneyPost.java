package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.cli.workshop.Journeys;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.check.JourneyChecker;
import org.shelterwright.layouts.file.OpenedJourney;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.Stand;

/** The sample Road-Rail Move with vehicles and crates on its cars by hand, for tests without a window. */
final class JourneyPost {
    static final JourneyChecker CHECKER = JourneyChecker.standard();
    static final Catalog CATALOG = BuiltInCatalog.read();
    static final OpenedJourney OPENED = new Journeys(() -> CATALOG, CHECKER.ruleSets()).open("sample:road-rail-move");

    private JourneyPost() {}

    /** As the sample is: nothing is on its cars yet. */
    static JourneyWork empty() {
        return new JourneyWork(OPENED.journey(), OPENED.parts());
    }

    static JourneyWork loaded() {
        List<Load> loads = new ArrayList<>();
        for (Load load : OPENED.journey().loads()) {
            loads.add(
                    switch (load.id()) {
                        case "wagon-1" ->
                            load.withStands(List.of(
                                    stand("river-post", 700, 160),
                                    stand("generator-trailer", 8_900, 470),
                                    stand("crate-1", 14_000, 870),
                                    stand("crate-2", 16_000, 870)));
                        case "wagon-2" -> load.withStands(List.of(stand("water-lab", 6_221, 151)));
                        default -> load;
                    });
        }
        return new JourneyWork(OPENED.journey().withLoads(loads), OPENED.parts());
    }

    static JourneySession session() {
        JourneySession session = new JourneySession(CHECKER);
        session.open(loaded());
        return session;
    }

    private static Stand stand(String what, int x, int y) {
        return new Stand(what, Pose.at(Point.ofMm(x, y, 0)), false);
    }
}
