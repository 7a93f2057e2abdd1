package org.shelterwright.layouts.transport.scene;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.shelterwright.catalog.transit.Transit;
import org.shelterwright.layouts.layout.Layout;

/**
 * What a journey refers to.
 *
 * @param transit cars, outlines, lashings and tables: those that it uses, and others that could take their place
 * @param layouts by the names that its pieces give them
 */
public record JourneyParts(Transit transit, Map<String, Layout> layouts) {
    public JourneyParts {
        layouts = Collections.unmodifiableMap(new LinkedHashMap<>(layouts));
    }
}
