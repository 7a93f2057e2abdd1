package org.shelterwright.app.desk.window;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.style.Theme;

/** The first steps at the desk, in ten minutes: the same as in the user guide. */
final class FirstSteps {
    private static final double WIDTH = 460;
    private static final double NUMBER = 22;

    private record Step(String name, String what) {}

    private static final List<Step> STEPS = List.of(
            new Step(
                    "Look",
                    "Drag with the right button to look around, turn the wheel to come nearer. Home shows the whole body, 1 to 6"
                            + " the fixed views."),
            new Step(
                    "Ask what is worst",
                    "Ctrl+F8 shows the worst finding, its place, and what would mend it. F8 goes on to the next."),
            new Step(
                    "Drag",
                    "Take a unit by its top and hold it over another place: a card over the view says what breaks there. Esc"
                            + " puts it back."),
            new Step(
                    "Be exact",
                    "Type a number while you hold it: the distance to the nearest neighbour. Or type its place below the"
                            + " equipment: 1.2 m, 3 in, 450+25. Ctrl+Z undoes, Ctrl+H lists what was done."),
            new Step(
                    "Ask why not",
                    "Draw what is still to place from the equipment into the view. Or select a unit, point at a place and"
                            + " press Q."),
            new Step(
                    "Change an item",
                    "Ctrl+E opens the item of the selected unit. The ledger answers for every unit of it."),
            new Step(
                    "Let it search",
                    "Pin what must stay with P. F7 begins the search, Shift+F7 stops it and keeps the best."),
            new Step(
                    "Keep it",
                    "Ctrl+S saves, Ctrl+P writes the documents. The name at the upper left opens a list of files and help;"
                            + " Ctrl+Space finds any command, F1 lists keys."));

    private FirstSteps() {}

    static void open(Pane over, Theme theme) {
        VBox all = new VBox(10);
        all.setPadding(new Insets(2, 14, 10, 14));
        for (int i = 0; i < STEPS.size(); i++) {
            Label number = new Label(String.valueOf(i + 1));
            number.getStyleClass().add("figure");
            number.setMinWidth(theme.sized(NUMBER));
            Label name = new Label(STEPS.get(i).name());
            name.getStyleClass().add("strong");
            Label what = new Label(STEPS.get(i).what());
            what.setWrapText(true);
            what.setMinHeight(Region.USE_PREF_SIZE);
            VBox words = new VBox(1, name, what);
            HBox.setHgrow(words, Priority.ALWAYS);
            all.getChildren().add(new HBox(4, number, words));
        }
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        SheetOver sheet = new SheetOver(
                over,
                "First steps",
                "About ten minutes. Everything can be undone, and no file is written before you say so.",
                scroll,
                WIDTH);
        sheet.setId("first-steps");
        sheet.open(scroll);
    }
}
