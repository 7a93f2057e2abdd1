package org.shelterwright.app.desk.space.mark;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.hand.Clearance;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.desk.space.measure.Distance;
import org.shelterwright.app.desk.space.measure.Mark;
import org.shelterwright.app.desk.space.pick.Picker;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;

/**
 * All that decides what lies over the space.
 *
 * @param picker what is shown, and in which situation
 * @param solid whether a unit is shown with its faces, and so can bear its name
 * @param selected ids of units
 * @param finding the finding that is looked at
 * @param hovered id of the unit under the pointer
 * @param naming where the pointer rests long enough to be told the name, on the pane
 * @param catches what caught in the drag that is going on
 * @param clearances distances in the drag that is going on
 * @param begun the first end of a distance that is being taken
 * @param frame drawn over empty space to select what lies in it, on the pane
 * @param covered what lies over the pane, under which nothing is to be said
 */
public record Over(
        Standing standing,
        Picker picker,
        Predicate<String> solid,
        Set<String> selected,
        @Nullable Finding finding,
        Set<Overlay> overlays,
        @Nullable String hovered,
        @Nullable Spot naming,
        List<Catch> catches,
        List<Clearance> clearances,
        List<Distance> distances,
        @Nullable Mark begun,
        @Nullable Bounds frame,
        List<Bounds> covered) {
    public Over {
        selected = Set.copyOf(selected);
        overlays = Set.copyOf(overlays);
        catches = List.copyOf(catches);
        clearances = List.copyOf(clearances);
        distances = List.copyOf(distances);
        covered = List.copyOf(covered);
    }
}
