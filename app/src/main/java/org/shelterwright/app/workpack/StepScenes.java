package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.Marking;
import org.shelterwright.app.view.StepPicture;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Datum;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.Scene;

/** The pictures of the steps of a plan. */
public final class StepScenes {
    private final Scene scene;
    private final BoltDownPlan plan;
    private final StepPicture picture;

    public StepScenes(Scene scene, BoltDownPlan plan, Typeface typeface) {
        this.scene = scene;
        this.plan = plan;
        this.picture = new StepPicture(typeface);
    }

    /** The picture of a step: the units up to it, its way, its dimensions. */
    public Drawing picture(BoltDownStep step) {
        return picture(step, StepPicture.HEIGHT);
    }

    /** The same at another height (mm). */
    Drawing picture(BoltDownStep step, double height) {
        String title = "Step " + step.number() + ", " + step.unit().name();
        return picture.of(title, upTo(step), view(step), marking(step), numbers(), height);
    }

    private Map<String, Integer> numbers() {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        plan.steps().forEach(step -> numbers.put(step.unit().id(), step.number()));
        return numbers;
    }

    /** What is in when a step is done. */
    private Scene upTo(BoltDownStep step) {
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (BoltDownStep one : plan.steps().subList(0, step.number())) {
            placements.put(one.unit().id(), one.unit().placement());
        }
        return Scene.of(scene.layout().withPlacements(placements), scene.rules());
    }

    /** From the side of the body on which it comes in. */
    private static Axonometry view(BoltDownStep step) {
        Opening opening = step.passage().opening();
        boolean front = opening != null && (opening.wall() == Face.FRONT || opening.wall() == Face.LEFT);
        return front ? Axonometry.FROM_FRONT_LEFT : Axonometry.FROM_REAR_RIGHT;
    }

    private static Marking marking(BoltDownStep step) {
        List<List<Box>> legs = step.passage().legs();
        List<Stage> stages = step.passage().stages();
        List<List<Box>> ghosts = new ArrayList<>();
        List<Point> route = new ArrayList<>();
        for (int i = legs.size() - 1; i >= 0; i--) {
            Box hull = legs.get(i).stream().reduce(Box::hull).orElseThrow();
            Point foot = hull.centre().with(Axis.Z, hull.z0());
            if (route.isEmpty() || !route.get(route.size() - 1).equals(foot)) {
                route.add(foot);
            }
            boolean outermost = i == legs.size() - 1;
            boolean turns = i > 0 && !stages.get(i).slidesTo(stages.get(i - 1));
            if (i > 0 && (outermost || turns)) {
                ghosts.add(legs.get(i));
            }
        }
        List<Marking.Measure> measures = new ArrayList<>();
        for (Datum datum : step.datums()) {
            if (datum.length() > 0) {
                measures.add(new Marking.Measure(datum.start(), datum.end(), Numerals.mm(datum.length())));
            }
        }
        return new Marking(step.unit().id(), ghosts, step.passage().free() ? route : List.of(), measures);
    }

    /** Where a unit stands when its step is done. */
    static Box outline(BoltDownStep step) {
        return step.unit().outline(Situation.ON_STATION);
    }
}
