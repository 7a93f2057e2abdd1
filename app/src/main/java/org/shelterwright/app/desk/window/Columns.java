package org.shelterwright.app.desk.window;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.Insets;
import javafx.scene.Cursor;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.style.Theme;

/**
 * The left column, the middle and the right column. The columns are dragged at their inner edges, or moved with the arrow
 * keys there. With large text the right column goes under the left one, so that the middle keeps its place.
 */
final class Columns extends HBox {
    static final double LEAST = 240;
    static final double MOST = 480;
    private static final int STACKED_FROM = 150;
    private static final double STACKED_SHARE = 0.85;
    private static final double STEP = 16;
    private static final double GRIP = 6;

    private final DoubleProperty leftWidth = new Width();
    private final DoubleProperty rightWidth = new Width();
    private final VBox left = new VBox();
    private final StackPane right = new StackPane();
    private final Region leftGrip = grip("Width of the left column", leftWidth, 1);
    private final Region rightGrip = grip("Width of the right column", rightWidth, -1);
    private final Region listPart;
    private final Region ledgerPart;
    private final Theme theme;
    private boolean isStacked;

    private static final class Width extends SimpleDoubleProperty {
        @Override
        public void set(double px) {
            super.set(Math.max(LEAST, Math.min(MOST, px)));
        }
    }

    Columns(Region listPart, Region middle, Region ledgerPart, Theme theme) {
        this.listPart = listPart;
        this.ledgerPart = ledgerPart;
        this.theme = theme;
        left.getStyleClass().addAll("column", "left");
        right.getStyleClass().addAll("column", "right");
        HBox.setHgrow(middle, Priority.ALWAYS);
        middle.setMinWidth(0);
        getChildren().addAll(left, leftGrip, middle, rightGrip, right);
        leftWidth.addListener((observable, before, now) -> arrange());
        rightWidth.addListener((observable, before, now) -> arrange());
        widthProperty().addListener((observable, before, now) -> arrange());
        theme.onChange(this::arrange);
        arrange();
    }

    /** Width of the left column for text of 100 % (px). */
    DoubleProperty leftWidth() {
        return leftWidth;
    }

    /** Width of the right column for text of 100 % (px). */
    DoubleProperty rightWidth() {
        return rightWidth;
    }

    private void arrange() {
        boolean stacked = theme.textPercent().get() >= STACKED_FROM;
        double half = getWidth() == 0 ? MOST * 2 : getWidth() / 2;
        double leftPx = stacked
                ? Math.min(half, theme.sized(Math.max(leftWidth.get(), rightWidth.get())))
                : theme.sized(leftWidth.get());
        fix(left, leftPx);
        fix(right, Math.min(theme.sized(rightWidth.get()), Math.max(LEAST, getWidth() - leftPx - LEAST)));
        if (left.getChildren().isEmpty() || stacked != isStacked) {
            stack(stacked);
        }
        for (Region one : new Region[] {right, rightGrip}) {
            one.setVisible(!stacked);
            one.setManaged(!stacked);
        }
    }

    private void stack(boolean stacked) {
        isStacked = stacked;
        left.getChildren().clear();
        right.getChildren().clear();
        listPart.minHeightProperty().unbind();
        ledgerPart.minHeightProperty().unbind();
        if (stacked) {
            listPart.minHeightProperty().bind(left.heightProperty().multiply(STACKED_SHARE));
            ledgerPart.minHeightProperty().bind(left.heightProperty().multiply(STACKED_SHARE));
            ScrollPane both = new ScrollPane(new VBox(listPart, ledgerPart));
            both.setFitToWidth(true);
            Revealing.in(both);
            VBox.setVgrow(both, Priority.ALWAYS);
            left.getChildren().add(both);
        } else {
            listPart.setMinHeight(0);
            ledgerPart.setMinHeight(0);
            VBox.setVgrow(listPart, Priority.ALWAYS);
            left.getChildren().add(listPart);
            right.getChildren().add(ledgerPart);
        }
    }

    private static void fix(Region column, double px) {
        column.setMinWidth(px);
        column.setPrefWidth(px);
        column.setMaxWidth(px);
    }

    private static Region grip(String name, DoubleProperty width, int direction) {
        Region grip = new Region();
        grip.getStyleClass().add("grip");
        grip.setPrefWidth(GRIP);
        grip.setMinWidth(GRIP);
        grip.setViewOrder(-1);
        HBox.setMargin(grip, new Insets(0, -GRIP / 2, 0, -GRIP / 2));
        grip.setCursor(Cursor.H_RESIZE);
        grip.setFocusTraversable(true);
        grip.setAccessibleText(name);
        double[] from = new double[2];
        grip.setOnMousePressed(event -> {
            from[0] = event.getSceneX();
            from[1] = width.get();
        });
        grip.setOnMouseDragged(event -> width.set(from[1] + direction * (event.getSceneX() - from[0])));
        grip.setOnKeyPressed(event -> {
            int step = event.getCode() == KeyCode.RIGHT ? direction : event.getCode() == KeyCode.LEFT ? -direction : 0;
            if (step != 0) {
                width.set(width.get() + step * STEP);
                event.consume();
            }
        });
        return grip;
    }
}
