package org.shelterwright.app.desk.space.solid;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.SubScene;
import javafx.scene.paint.Color;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.look.Role;

/** A scene of things. Shows one list of them after the other and touches only what changed. */
public final class Things implements Aimed {
    private final Palette palette = new Palette();
    private final Function<Colour, Color> worn;
    private final Coats coats;
    private final Group solids = new Group();
    private final Map<String, ThingBody> bodies = new LinkedHashMap<>();
    private final Lens lens;
    private Eye eye;

    public Things(Function<Colour, Color> worn, Eye eye) {
        this.worn = worn;
        this.eye = eye;
        coats = new Coats(palette, worn);
        lens = new Lens(new Group(solids, new AmbientLight(Color.WHITE)), eye);
        paint();
    }

    @Override
    public SubScene view() {
        return lens.view();
    }

    /** Shows things; those that did not change are not touched. */
    public void show(List<Thing> things) {
        Set<String> gone = new HashSet<>(bodies.keySet());
        for (Thing thing : things) {
            gone.remove(thing.id());
            bodies.computeIfAbsent(thing.id(), this::made).show(thing, eye);
        }
        for (String id : gone) {
            ThingBody body = bodies.remove(id);
            if (body != null) {
                solids.getChildren().remove(body.group());
            }
        }
    }

    /** How each thing is dressed. */
    public void dress(Function<String, Dress> dresses) {
        bodies.forEach((id, body) -> body.dress(dresses.apply(id)));
    }

    @Override
    public void aim(Eye from) {
        eye = from;
        lens.aim(from);
        bodies.values().forEach(body -> body.aim(from));
    }

    /** Paints all colours again, after a change of the theme. */
    public void paint() {
        palette.paint();
        lens.view().setFill(worn.apply(Role.VIEW.colour()));
    }

    private ThingBody made(String id) {
        ThingBody body = new ThingBody(palette, coats);
        solids.getChildren().add(body.group());
        return body;
    }
}
