package org.shelterwright.app.desk.search;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
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
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.FitOption;

/** A layout that was found: its plan at a small true scale, its verdict, and the order to take it over. */
final class OptionCard extends VBox {
    /** Of the plan (px). */
    static final double LEAST_WIDTH = 130;

    static final double MOST_WIDTH = 150;

    /** What a card is wider than its plan (px). */
    static final double AROUND = 16;

    private static final double HEIGHT_SHARE = 0.38;

    private final FitOption option;
    private final Button take = new Button("Take over");
    private final Label here = new Label("on the desk now");

    /** @param width of its plan (px) */
    OptionCard(String letter, FitOption option, Scene scene, Theme theme, double width, Runnable adopt) {
        this.option = option;
        getStyleClass().add("card");
        setSpacing(2);
        setStyle("-fx-padding: 5 6 2 6;");
        double height = Math.floor(width * HEIGHT_SHARE);
        Canvas plan = new Canvas(width, height);
        new ScreenCanvas(plan.getGraphicsContext2D(), new Worn(theme)).draw(shapes(scene, width, height));
        Ledger ledger = option.ledger();
        Label name = new Label(letter);
        name.getStyleClass().add("strong");
        Label verdict = new Label(words(ledger));
        verdict.getStyleClass().add("figure");
        HBox judged = new HBox(6, name, new Sign(theme, ledger.worst()), verdict);
        judged.setAlignment(Pos.CENTER_LEFT);
        Label wishes = new Label("wishes lack " + Lacking.mm(option.score().soft()));
        wishes.getStyleClass().add("caption");
        take.getStyleClass().add("order");
        take.setId("take-" + letter.toLowerCase(Locale.ROOT));
        take.setOnAction(event -> adopt.run());
        take.setAccessibleText("Take over layout " + letter + ", " + words(ledger));
        verdict.setMinWidth(USE_PREF_SIZE);
        take.setMinWidth(USE_PREF_SIZE);
        here.getStyleClass().add("second");
        StackPane order = new StackPane(take, here);
        order.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(plan, judged, wishes, order);
    }

    /** Says whether it is what stands, so that nobody takes over what is there. */
    void compare(Layout standing) {
        boolean same = Search.stands(option.layout(), standing);
        take.setVisible(!same);
        here.setVisible(same);
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

    private static List<Shape> shapes(Scene scene, double width, double height) {
        Box outside = scene.body().outside();
        double lengthMm = (outside.x1() - outside.x0()) / 1000.0;
        double widthMm = (outside.y1() - outside.y0()) / 1000.0;
        double wide = width / ScreenCanvas.PIXELS;
        double high = height / ScreenCanvas.PIXELS;
        double scale = Math.max(lengthMm / wide, widthMm / high) * 1.03;
        Spot origin = new Spot(
                (wide - lengthMm / scale) / 2 - outside.x0() / 1000.0 / scale,
                (high + widthMm / scale) / 2 + outside.y0() / 1000.0 / scale);
        return new FlatView(scene, Situation.ON_STATION, new Sheeted(Aspect.ABOVE, scale, origin), 0, null)
                .shapes(false);
    }
}
