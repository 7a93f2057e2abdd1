package org.shelterwright.app.desk.space.solid;

import java.util.List;
import org.shelterwright.app.view.Block;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.Trace;

/**
 * Something in a scene that is no unit of a layout: a car, what stands on it, an outline.
 *
 * @param id by which it is dressed
 * @param blocks its solids, whose edges are drawn
 * @param facets flat convex patches, without edges
 * @param traces lines
 */
public record Thing(String id, List<Block> blocks, List<Facet> facets, List<Trace> traces) {
    public Thing {
        blocks = List.copyOf(blocks);
        facets = List.copyOf(facets);
        traces = List.copyOf(traces);
    }
}
