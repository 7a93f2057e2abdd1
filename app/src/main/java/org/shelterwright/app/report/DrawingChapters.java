package org.shelterwright.app.report;

import java.util.List;
import org.shelterwright.app.arrangement.GeneralArrangement;
import org.shelterwright.app.arrangement.PlanPicture;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.gltf.Glb;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.Caption;
import org.shelterwright.app.view.IsometricPicture;
import org.shelterwright.app.view.PictureSheet;
import org.shelterwright.catalog.item.Situation;

/** The general arrangement drawing, pictures and models: what the layout looks like. */
final class DrawingChapters {
    private DrawingChapters() {}

    static void arrangement(DocumentSet set, Issue issue, Press press) {
        List<Drawing> sheets = new GeneralArrangement(press.typeface())
                .sheets(issue.scene(), Situation.ON_STATION, DrawingNotes.of(issue));
        String what = "General arrangement drawing";
        set.add(1, "general-arrangement.pdf", what + ", true to scale", press.pdf(issue, what, sheets));
        for (int i = 0; i < sheets.size(); i++) {
            String name = i == 0 ? "general-arrangement.svg" : "general-arrangement-" + (i + 1) + ".svg";
            set.add(
                    1,
                    name,
                    what + ", sheet " + (i + 1) + ", to draw on",
                    press.svg().write(sheets.get(i)));
        }
    }

    /** The plan of a situation. */
    static void plan(DocumentSet set, Issue issue, Press press, Situation situation) {
        Drawing plan =
                new PlanPicture(press.typeface()).of(issue.scene(), situation, caption(issue, situation, "from above"));
        String name = "picture-" + file(situation) + "-plan";
        set.add(4, name + ".png", "Plan, " + words(situation), press.png().write(plan));
        set.add(4, name + ".svg", "Plan, " + words(situation), press.svg().write(plan));
    }

    /** The picture of a situation, seen from a corner. */
    static void picture(
            DocumentSet set, Issue issue, Press press, Situation situation, Axonometry view, String corner) {
        Caption caption = caption(issue, situation, "seen from the " + corner);
        PictureSheet sheet = new IsometricPicture(press.typeface())
                .of(issue.scene(), situation, view, caption, DrawingNotes.marks(issue, situation));
        String name = "picture-" + file(situation) + "-" + corner.replace(' ', '-');
        String what = "Picture, " + words(situation) + ", from the " + corner;
        set.add(4, name + ".png", what, press.png().write(sheet));
        set.add(4, name + ".svg", what, press.svg().write(sheet.drawing()));
    }

    /** The model of a situation. */
    static void model(DocumentSet set, Issue issue, Situation situation) {
        set.add(
                5,
                "model-" + file(situation) + ".glb",
                "3D model (glTF 2.0), " + words(situation),
                Glb.write(issue.scene(), situation, issue.program()));
    }

    private static Caption caption(Issue issue, Situation situation, String from) {
        return new Caption(issue.name(), words(situation) + ", " + from, issue.foot());
    }

    private static String words(Situation situation) {
        return situation == Situation.ON_STATION ? "on station" : "on the road";
    }

    private static String file(Situation situation) {
        return words(situation).replace(' ', '-');
    }
}
