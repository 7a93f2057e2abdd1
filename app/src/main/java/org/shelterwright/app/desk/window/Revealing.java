package org.shelterwright.app.desk.window;

import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import org.jspecify.annotations.Nullable;

/** Scrolls a pane to what takes the focus in it, however it came to the focus: by Tab, by a key, or by a command. */
final class Revealing {
    private final ScrollPane pane;
    private final ChangeListener<Node> reveal = (observable, before, now) -> show(now);

    private Revealing(ScrollPane pane) {
        this.pane = pane;
    }

    static void in(ScrollPane pane) {
        Revealing revealing = new Revealing(pane);
        pane.sceneProperty().addListener((observable, before, now) -> revealing.follow(before, now));
        // What comes in above it must not push it out of sight.
        pane.getContent().layoutBoundsProperty().addListener((observable, before, now) -> {
            if (before.getHeight() != now.getHeight() && pane.getScene() != null) {
                revealing.show(pane.getScene().getFocusOwner());
            }
        });
    }

    private void follow(@Nullable Scene before, @Nullable Scene now) {
        if (before != null) {
            before.focusOwnerProperty().removeListener(reveal);
        }
        if (now != null) {
            now.focusOwnerProperty().addListener(reveal);
        }
    }

    private void show(@Nullable Node focused) {
        Node content = pane.getContent();
        if (focused == null || content == null || !isIn(focused, content)) {
            return;
        }
        double room = pane.getViewportBounds().getHeight();
        double most = content.getLayoutBounds().getHeight() - room;
        if (most <= 0) {
            return;
        }
        Bounds place = content.sceneToLocal(focused.localToScene(focused.getLayoutBounds()));
        double top = pane.getVvalue() * most;
        // What is higher than the room is shown from its top on.
        double bottom = Math.min(place.getMaxY(), place.getMinY() + room);
        if (place.getMinY() < top) {
            pane.setVvalue(place.getMinY() / most);
        } else if (bottom > top + room) {
            pane.setVvalue((bottom - room) / most);
        }
    }

    /** Whether a node is, or is in, another. */
    static boolean isIn(@Nullable Node node, Node holder) {
        for (Node one = node; one != null; one = one.getParent()) {
            if (one == holder) {
                return true;
            }
        }
        return false;
    }
}
