package org.shelterwright.app.desk.search;

import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.view.Aspect;
import org.shelterwright.app.view.FlatView;
import org.shelterwright.app.view.Sheeted;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;

/** A layout that was found: its plan at a small true scale, its verdict, and the order to take it over. */
final class OptionCard extends VBox {
    private static final double WIDTH = 190;
    private static final double HEIGHT = 84;

    OptionCard(String letter, Scene scene, Ledger ledger, Theme theme, Runnable adopt) {
        getStyleClass().add("card");
        setSpacing(4);
        setPadding(new Insets(6, 8, 6, 8));
        Canvas plan = new Canvas(WIDTH, HEIGHT);
        new ScreenCanvas(plan.getGraphicsContext2D(), new Worn(theme)).draw(shapes(scene));
        Label name = new Label(letter);
        name.getStyleClass().add("strong");
        Label verdict = new Label(words(ledger));
        verdict.getStyleClass().add("figure");
        Button take = new Button("Take over");
        take.getStyleClass().add("order");
        take.setOnAction(event -> adopt.run());
        take.setAccessibleText("Take over layout " + letter + ", " + words(ledger));
        verdict.setMinWidth(USE_PREF_SIZE);
        take.setMinWidth(USE_PREF_SIZE);
        HBox foot = new HBox(6, name, new Sign(theme, ledger.worst()), verdict, take);
        foot.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(plan, foot);
    }

    static String words(Ledger ledger) {
        for (Verdict verdict : List.of(Verdict.BROKEN, Verdict.NOT_ASSESSED, Verdict.CLOSE)) {
            long count = ledger.count(verdict);
            if (count > 0) {
                return count + " "
                        + switch (verdict) {
                            case BROKEN -> "broken";
                            case NOT_ASSESSED -> "not assessed";
                            case CLOSE -> "close";
                            case MET -> "met";
                        };
            }
        }
        return "all met";
    }

    private static List<Shape> shapes(Scene scene) {
        Box outside = scene.body().outside();
        double lengthMm = (outside.x1() - outside.x0()) / 1000.0;
        double widthMm = (outside.y1() - outside.y0()) / 1000.0;
        double wide = WIDTH / ScreenCanvas.PIXELS;
        double high = HEIGHT / ScreenCanvas.PIXELS;
        double scale = Math.max(lengthMm / wide, widthMm / high) * 1.03;
        Spot origin = new Spot(
                (wide - lengthMm / scale) / 2 - outside.x0() / 1000.0 / scale,
                (high + widthMm / scale) / 2 + outside.y0() / 1000.0 / scale);
        return new FlatView(scene, Situation.ON_STATION, new Sheeted(Aspect.ABOVE, scale, origin), 0, null)
                .shapes(false);
    }
}
