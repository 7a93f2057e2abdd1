package org.shelterwright.app.desk.item;

import javafx.geometry.Insets;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.CornerRadii;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.paint.Worn;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.scene.Scene;

/** The picture of an item. What was drawn last stays while something that is typed makes no item. */
final class ItemPicture extends Region {
    private static final double HEIGHT = 176;
    private static final double MARGIN = 2.5;

    private final Canvas canvas = new Canvas();
    private final ScreenCanvas sheet;
    private final Scene desk;
    private final Theme theme;
    private @Nullable Item item;

    ItemPicture(Scene desk, Theme theme) {
        this.desk = desk;
        this.theme = theme;
        sheet = new ScreenCanvas(canvas.getGraphicsContext2D(), new Worn(theme));
        getChildren().add(canvas);
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        setMaxHeight(HEIGHT);
        setAccessibleText("Picture of the item");
    }

    void show(Item shown) {
        item = shown;
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        setBackground(new Background(new BackgroundFill(theme.color(Role.VIEW), new CornerRadii(5), Insets.EMPTY)));
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        Item shown = item;
        if (shown != null && getWidth() > 0) {
            Bounds area = new Bounds(
                    MARGIN,
                    MARGIN,
                    getWidth() / ScreenCanvas.PIXELS - MARGIN,
                    getHeight() / ScreenCanvas.PIXELS - MARGIN);
            sheet.draw(ItemLook.shapes(shown, desk, area));
        }
    }
}
