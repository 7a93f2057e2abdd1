package org.shelterwright.app.desk.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.style.Sign;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;

/** The pages as stations on a line along the job, each with the worst verdict of its limits. */
final class PageLine extends HBox {
    private final ObjectProperty<Page> shown = new SimpleObjectProperty<>(Page.FIT_OUT);
    private final List<Station> stations = new ArrayList<>();
    private Runnable again = () -> {};

    PageLine(Theme theme) {
        setAlignment(Pos.CENTER);
        for (Page page : Page.values()) {
            if (!stations.isEmpty()) {
                Region line = new Region();
                line.setStyle("-fx-background-color: -lines;");
                line.setMinSize(28, 1.5);
                line.setPrefSize(44, 1.5);
                line.setMaxHeight(1.5);
                getChildren().add(line);
            }
            Station station = new Station(page, theme);
            station.setOnAction(event -> {
                if (shown.get() == page) {
                    again.run();
                }
                shown.set(page);
                station.setSelected(true);
            });
            stations.add(station);
            getChildren().add(station);
        }
        shown.addListener((observable, before, now) -> mark());
        mark();
    }

    ObjectProperty<Page> shown() {
        return shown;
    }

    /** What is done when the page that is there is chosen again, as when something else is shown in its place. */
    void onAgain(Runnable action) {
        again = action;
    }

    /** Marks no page, since something else is shown. */
    void markNone() {
        stations.forEach(station -> station.setSelected(false));
    }

    /**
     * Shows how every page stands.
     *
     * @param journey the rows of the journey on the desk, in place of those of the layout; empty if there is none
     */
    void show(Ledger ledger, Optional<Ledger> journey) {
        stations.forEach(station -> station.show(
                station.page == Page.TRANSPORT && journey.isPresent()
                        ? Page.ofAll(journey.get())
                        : station.page.standing(ledger)));
    }

    /** Marks the page that is there. */
    void mark() {
        stations.forEach(station -> station.setSelected(station.page == shown.get()));
    }

    private static final class Station extends ToggleButton {
        private final Page page;
        private final Sign sign;
        private final Label words = new Label();

        Station(Page page, Theme theme) {
            this.page = page;
            sign = new Sign(theme, Verdict.MET);
            Label name = new Label(page.title());
            name.getStyleClass().add("name");
            words.getStyleClass().add("caption");
            HBox verdict = new HBox(5, sign, words);
            verdict.setAlignment(Pos.CENTER);
            VBox both = new VBox(1, name, verdict);
            both.setAlignment(Pos.CENTER);
            setGraphic(both);
            setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
            getStyleClass().add("station");
            setMinWidth(140);
        }

        void show(Page.Standing standing) {
            Verdict verdict = standing.verdict();
            sign.setVisible(verdict != null);
            sign.setManaged(verdict != null);
            if (verdict != null) {
                sign.show(verdict);
            }
            words.setText(standing.words());
            words.getStyleClass().removeAll("met", "close", "broken", "not-assessed");
            if (verdict != null) {
                words.getStyleClass().add(verdict.word().replace(' ', '-').toLowerCase(Locale.ROOT));
            }
            setAccessibleText(page.title() + ", " + standing.words());
        }
    }
}
