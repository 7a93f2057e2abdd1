package org.shelterwright.app.desk.space;

import java.util.List;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.desk.space.mark.Glass;
import org.shelterwright.app.desk.space.pick.Picker;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Which units a frame over the view holds: those that lie in it whole. */
final class Framed {
    private Framed() {}

    static List<String> units(Eye eye, Picker picker, Bounds frame) {
        Glass glass = new Glass(eye, 1);
        return picker.scene().units().stream()
                .filter(unit -> picker.shown().test(unit.id()))
                .filter(unit -> frame.contains(glass.bounds(unit.outline(picker.situation()))))
                .map(PlacedUnit::id)
                .toList();
    }
}
