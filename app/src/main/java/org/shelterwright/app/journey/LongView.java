package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** A loaded car from its right side and from above, to one scale. */
final class LongView {
    private LongView() {}

    /** Height on paper (mm) for a width. */
    static double height(PlacedLoad load, double width) {
        return LongScale.height(load, width);
    }

    /** @param paper where it goes; its height follows from its width */
    static List<Shape> shapes(Typeface typeface, LegScene leg, PlacedLoad load, Bounds paper) {
        List<Shape> shapes = new ArrayList<>();
        LongScale on = new LongScale(load, paper);
        new SideView(typeface, leg, load, on, shapes).draw();
        new TopView(typeface, leg, load, on, shapes).draw();
        return shapes;
    }
}
