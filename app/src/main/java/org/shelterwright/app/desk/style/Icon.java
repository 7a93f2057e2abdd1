package org.shelterwright.app.desk.style;

import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import javafx.scene.transform.Scale;

/**
 * The icons: strokes of one weight on a grid of 24. Every closed outline keeps a gap at its lower right. An icon never
 * stands alone without a tooltip and an accessible name.
 */
public enum Icon {
    PLACE("M4 9l8-4 8 4-8 4zM4 9v7l8 4v-7M20 9v4"),
    TURN("M19 8a8 8 0 1 0 1 5M20 3v5.5h-5.5"),
    PIN("M12 14v7M6 14h12M8 14l1-10h6l1 10"),
    MOUNT_ON("M16 20H4v-7h16v4M8 13V5h8v4"),
    LINE_UP("M4 3v18M20 8V5H8v4h12M16 18H8v-4h8v1"),
    DUPLICATE("M12 16H4V4h12v4M8 8h12v8M16 20H8V8"),
    TAKE_OUT("M12 21H4V6h12v4M10 15h11M17 11l4 4-4 4"),
    SECTION("M3 7H8M10 7H11.5M13.5 7H18.5M20.5 7H21M3 17H8M10 17H11.5M13.5 17H18.5M20.5 17H21M7 7v10M17 7v5"),
    MEASURE("M3 14l11-11 7 7-6 6M3 14l7 7 2.5-2.5M7 10l2 2M10 7l3 3"),
    SHOW_HIDE(
            "M2 12c5-7.5 15-7.5 20 0-1.5 2.3-3.5 3.9-5.6 4.8M12.5 17.6C8.5 17.6 4.5 15.7 2 12M9 12a3 3 0 1 0 6 0a3 3 0 1 0 -6 0"),
    ISOLATE("M8 8h8v5M12 16H8V8M3 7V3h4M17 3h4v4M3 17v4h4"),
    OVERLAYS("M3 8l9-4 9 4-9 4zM3 13l9 4 9-4M3 17.5l9 4 5-2.2"),
    FIND("M15.3 15.3a6.5 6.5 0 1 1 1.9-3.3M15.5 15.5L21 21"),
    UNDO("M4 9h10a5 5 0 0 1 0 10H8M8.5 4.5L4 9l4.5 4.5"),
    REDO("M20 9H10a5 5 0 0 0 0 10h6M15.5 4.5L20 9l-4.5 4.5"),
    START("M7 4v16l13-8z"),
    STOP("M6 6h12v8M14 18H6V6"),
    BACK("M15 4l-8 8 8 8"),
    ON("M9 4l8 8-8 8"),
    ADD("M12 4v16M4 12h16"),
    COMPARE("M4 5h6v14H4zM14 5h6v9M17 19h-3V5"),
    CABLE("M3 7h4c6 0 4 10 10 10h4M3 4v6M21 14v6"),
    CENTRE_OF_MASS("M12 2v9M8 11h8l-4 10z"),
    WAY_IN("M5 21V4h9v17M5 21h4M14 4l5 3v12l-2 .8"),
    FIXING("M5 4h14v5H5zM9 9v12h6v-8M9 13h6M9 17h6"),
    TORQUE("M4 20L15 9M15 9a4.5 4.5 0 1 1 3 1.5M3 15a9 9 0 0 1 5-9"),
    HOIST("M12 3v6M12 9l-7 5M12 9l7 5M5 14v6h10M19 14v2"),
    BY_HAND("M5 6a3 3 0 1 0 6 0a3 3 0 1 0 -6 0M13 6a3 3 0 1 0 6 0a3 3 0 1 0 -6 0M3 20v-4l3-4h4l2 3 2-3h4l3 4v4"),
    WEIGH("M3 20h18M6 20l2-6h8l1.3 4M12 14V9M8 9h8M9 4h6v5H9z"),
    TRANSIT_CAR("M2 13h20M3 13v3h18M5 18.5a2 2 0 1 0 4 0a2 2 0 1 0 -4 0M15 18.5a2 2 0 1 0 4 0a2 2 0 1 0 -4 0"),
    LASHING("M3 20L10 7h4l7 13M1 20h4M19 20h4M12 3v4"),
    CRATE("M4 6h16v8M16 19H4V6M4 10h16M9 10v9"),
    OUTLINE("M5 21V9l4-5h6l4 5v12M12 20H9v-9h6v5"),
    DOCUMENT("M6 3h9l4 4v8M14 21H6V3M9 11h7M9 15h4");

    private static final double GRID = 24;
    private static final double STROKE = 1.75;

    private final String path;

    Icon(String path) {
        this.path = path;
    }

    /** A new node of this icon, which grows with the text; the style sheet has a rule for each size, and colours it as "icon". */
    public Region node(int sizePx) {
        return new Drawn(path, sizePx);
    }

    private static final class Drawn extends Region {
        private final Scale scale = new Scale();

        Drawn(String path, int sizePx) {
            getStyleClass().add("icon-" + sizePx);
            setMouseTransparent(true);
            SVGPath drawn = new SVGPath();
            drawn.setContent(path);
            drawn.getStyleClass().add("icon");
            drawn.setStrokeWidth(STROKE);
            drawn.getTransforms().add(scale);
            drawn.setManaged(false);
            getChildren().add(drawn);
        }

        @Override
        protected void layoutChildren() {
            double side = Math.min(getWidth(), getHeight()) / GRID;
            scale.setX(side);
            scale.setY(side);
        }
    }
}
