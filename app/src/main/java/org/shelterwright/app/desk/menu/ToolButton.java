package org.shelterwright.app.desk.menu;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import org.shelterwright.app.desk.style.Icon;

/** A button of one icon within a row of tools; while what it is about is on, it is marked. */
public final class ToolButton extends Button {
    private static final String ON = "on";
    private static final int SIZE = 20;

    /** @param name what it is for, as its tooltip says and a screen reader reads */
    public ToolButton(String name, Icon icon) {
        super(null, icon.node(SIZE));
        getStyleClass().add("bare");
        setAccessibleText(name);
        setTooltip(new Tooltip(name));
    }

    public ToolButton(String name, Node graphic, String styleClass) {
        super(null, graphic);
        getStyleClass().add(styleClass);
        setAccessibleText(name);
        setTooltip(new Tooltip(name));
    }

    public void mark(boolean on) {
        getStyleClass().remove(ON);
        if (on) {
            getStyleClass().add(ON);
        }
    }
}
