package org.shelterwright.app.desk.space;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.ToggleButton;
import javafx.scene.paint.Color;
import javafx.scene.shape.SVGPath;
import org.shelterwright.app.desk.space.mark.Overlay;
import org.shelterwright.app.desk.style.Fonts;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.look.Role;

/** A chip for each overlay: chosen ones have a tick and an accent border. */
final class Chips {
    private static final String TICK = "M 0 4 L 3.5 8 L 10 0";

    private final Map<Overlay, ToggleButton> chips = new EnumMap<>(Overlay.class);
    private final Showing showing;
    private final Theme theme;

    Chips(Showing showing, Theme theme) {
        this.showing = showing;
        this.theme = theme;
        for (Overlay overlay : Overlay.values()) {
            ToggleButton chip = new ToggleButton(overlay.words());
            chip.setFocusTraversable(true);
            chip.getStyleClass().add("chip");
            chip.setAccessibleText("Show " + overlay.words().toLowerCase(java.util.Locale.ROOT));
            chip.setOnAction(event -> showing.show(overlay, chip.isSelected()));
            chips.put(overlay, chip);
        }
        theme.onChange(this::paint);
        showing.onChange(this::paint);
        paint();
    }

    List<ToggleButton> all() {
        return List.copyOf(chips.values());
    }

    private void paint() {
        chips.forEach((overlay, chip) -> {
            boolean on = showing.overlays().contains(overlay);
            chip.setSelected(on);
            chip.setGraphic(on ? tick() : null);
            chip.setStyle("-fx-background-color: " + hex(on ? Role.RAISED : Role.PANEL) + "; -fx-text-fill: "
                    + hex(on ? Role.TEXT : Role.MUTED) + "; -fx-border-color: " + hex(on ? Role.ACCENT : Role.LINES)
                    + "; -fx-border-width: " + (on ? 1.5 : 1)
                    + "; -fx-border-radius: 14; -fx-background-radius: 14; -fx-background-insets: 0;"
                    + " -fx-padding: 4 9 4 9; -fx-graphic-text-gap: 5;");
            chip.setFont(Fonts.of(Label.Weight.MEDIUM, theme.sized(12)));
        });
    }

    private SVGPath tick() {
        SVGPath tick = new SVGPath();
        tick.setContent(TICK);
        tick.setFill(Color.TRANSPARENT);
        tick.setStroke(theme.color(Role.ACCENT));
        tick.setStrokeWidth(1.75);
        return tick;
    }

    private String hex(Role role) {
        return String.format("#%06X", role.colour(theme.ground().get()).rgb());
    }
}
