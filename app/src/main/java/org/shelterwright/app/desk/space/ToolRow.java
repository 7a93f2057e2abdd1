package org.shelterwright.app.desk.space;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.menu.ToolButton;

/**
 * The tools of a view in one row, so that the view keeps its height: chips for which it has no room give way to a button whose
 * list holds them all. The button is marked while one of those that gave way is chosen.
 */
final class ToolRow extends Region {
    private static final double GAP = 6;

    private final List<Node> always;
    private final List<ToggleButton> chips;
    private final ToolButton more;

    /**
     * @param always what is always shown, from the left on
     * @param more opens the list of what the chips stand for
     */
    ToolRow(List<? extends Node> always, List<ToggleButton> chips, ToolButton more) {
        this.always = List.copyOf(always);
        this.chips = List.copyOf(chips);
        this.more = more;
        getChildren().addAll(always);
        getChildren().addAll(chips);
        getChildren().add(more);
        setPickOnBounds(false);
        chips.forEach(chip -> chip.selectedProperty().addListener((observable, before, now) -> requestLayout()));
    }

    @Override
    protected double computePrefHeight(double width) {
        return getChildren().stream()
                .mapToDouble(node -> node.prefHeight(-1))
                .max()
                .orElse(0);
    }

    @Override
    protected double computePrefWidth(double height) {
        List<Node> shown = new ArrayList<>(always);
        shown.addAll(chips);
        return wide(shown);
    }

    @Override
    protected void layoutChildren() {
        boolean all = computePrefWidth(-1) <= getWidth();
        double room = all ? getWidth() : getWidth() - GAP - more.prefWidth(-1);
        double x = 0;
        for (Node node : always) {
            x = put(node, x);
        }
        boolean left = false;
        boolean marked = false;
        for (ToggleButton chip : chips) {
            left = left || x + chip.prefWidth(-1) > room;
            chip.setVisible(!left);
            marked = marked || left && chip.isSelected();
            if (!left) {
                x = put(chip, x);
            }
        }
        more.setVisible(left);
        more.mark(marked);
        put(more, x);
    }

    private double put(Node node, double x) {
        double width = node.prefWidth(-1);
        double height = node.prefHeight(-1);
        node.resizeRelocate(x, snapPositionY((getHeight() - height) / 2), width, height);
        return x + width + GAP;
    }

    private static double wide(List<Node> nodes) {
        return nodes.stream().mapToDouble(node -> node.prefWidth(-1) + GAP).sum() - GAP;
    }
}
