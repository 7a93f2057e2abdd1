package org.shelterwright.app.desk.space;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.app.desk.session.Session;
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

    /** Selects what lies in a frame, beside what is selected already or in place of it. */
    static void select(Session session, Eye eye, Picker picker, Bounds frame, boolean more) {
        Set<String> chosen =
                new LinkedHashSet<>(more ? session.selection().units().get() : Set.of());
        chosen.addAll(units(eye, picker, frame));
        session.selection().set(chosen);
    }
}
