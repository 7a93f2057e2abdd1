package org.shelterwright.app.desk.window;

import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.hand.Breakage;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.session.Standing;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** While a unit is held over a place: which limits break there, and what would mend each. Lies over the view. */
final class HeldCard extends VBox {
    private static final int MOST = 3;

    /** Height of the view for each limit that is told of (px, with text of 100 %). */
    private static final double EACH = 270;

    private static final double WIDTH = 320;
    private static final double INSET = 16;

    private final Session session;
    private final Theme theme;
    private Ledger settled;
    private Breakage shown = new Breakage(List.of());

    HeldCard(Session session, Theme theme) {
        super(6);
        this.session = session;
        this.theme = theme;
        settled = session.now().ledger();
        setId("held-card");
        getStyleClass().addAll("card", "broken");
        setMouseTransparent(true);
        setMaxSize(theme.sized(WIDTH), Region.USE_PREF_SIZE);
        StackPane.setAlignment(this, Pos.BOTTOM_RIGHT);
        StackPane.setMargin(this, new Insets(INSET));
        setVisible(false);
        session.standing().addListener((observable, before, now) -> follow(now));
    }

    private void follow(Standing now) {
        if (!now.tryingOut()) {
            settled = now.ledger();
            setVisible(false);
            return;
        }
        Breakage breakage =
                Breakage.of(settled, now.ledger(), session.selection().units().get());
        if (!breakage.equals(shown)) {
            shown = breakage;
            setMaxWidth(theme.sized(WIDTH));
            getChildren().setAll(lines(breakage, theme, most()));
        }
        setVisible(!breakage.rows().isEmpty());
    }

    /**
     * Keeps out of the way of the pointer: goes to the other side of the view when the pointer comes over it, and lies there when
     * it comes up.
     *
     * @param x of the pointer in the view (px)
     */
    void avoid(double x, double width) {
        boolean under = x >= getLayoutX() && x <= getLayoutX() + getWidth();
        if (!isVisible() || under) {
            StackPane.setAlignment(this, x > width / 2 ? Pos.BOTTOM_LEFT : Pos.BOTTOM_RIGHT);
        }
    }

    /** Fewer in a low view, of which something must be left to see. */
    private int most() {
        double high = getParent() == null ? 0 : getParent().getLayoutBounds().getHeight();
        return (int) Math.max(1, Math.min(MOST, Math.round(high / theme.sized(EACH))));
    }

    /** What breaks, in words: a heading, then each limit with what would mend it. */
    static VBox lines(Breakage breakage, Theme theme, int most) {
        VBox all = new VBox(6);
        Label head = new Label(breakage.words());
        head.getStyleClass().add("strong");
        HBox title = new HBox(8, new Sign(theme, breakage.rows().isEmpty() ? Verdict.MET : Verdict.BROKEN), head);
        title.setAlignment(Pos.CENTER_LEFT);
        all.getChildren().add(title);
        breakage.rows().stream().limit(most).forEach(row -> all.getChildren().add(line(row)));
        int more = breakage.rows().size() - most;
        if (more > 0) {
            all.getChildren().add(text("and " + more + " more in the ledger", "caption"));
        }
        return all;
    }

    private static VBox line(Row row) {
        VBox lines = new VBox(1, text(row.finding(), "label"));
        String mend = row.mend();
        if (mend != null) {
            lines.getChildren().add(text(mend, "second"));
        }
        return lines;
    }

    private static Label text(String words, String style) {
        Label label = new Label(words);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
