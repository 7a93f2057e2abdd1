package org.shelterwright.app.desk.search;

import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.layout.HBox;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.solver.fit.FitOption;

/** The layouts that a search offers, side by side, as large as there is room for all of them. */
final class OptionShelf extends HBox {
    private static final double GAP = 8;

    private final Session session;
    private final Theme theme;
    private final IntConsumer adopt;
    private List<FitOption> options = List.of();
    private double room;
    private double drawn;

    /** @param adopt is given which of them is taken over, from 0 */
    OptionShelf(Session session, Theme theme, IntConsumer adopt) {
        super(GAP);
        this.session = session;
        this.theme = theme;
        this.adopt = adopt;
        session.standing().addListener((observable, before, now) -> {
            if (!now.tryingOut()) {
                compare();
            }
        });
    }

    void show(List<FitOption> offered) {
        List<FitOption> shown = offered.subList(0, Math.min(offered.size(), SearchCommands.LETTERS.size()));
        if (!shown.equals(options)) {
            options = List.copyOf(shown);
            draw();
        }
    }

    /** Says how much room there is (px). */
    void fit(double px) {
        room = px;
        if (width() != drawn) {
            draw();
        }
    }

    private double width() {
        int count = Math.max(1, options.size());
        double each = (room - GAP * (count - 1)) / count - OptionCard.AROUND;
        return Math.max(OptionCard.LEAST_WIDTH, Math.min(OptionCard.MOST_WIDTH, Math.floor(each)));
    }

    private void draw() {
        drawn = width();
        getChildren().clear();
        for (int i = 0; i < options.size(); i++) {
            int index = i;
            FitOption option = options.get(i);
            getChildren()
                    .add(new OptionCard(
                            SearchCommands.LETTERS.get(i),
                            option,
                            session.checker().scene(option.layout()),
                            theme,
                            drawn,
                            () -> adopt.accept(index)));
        }
        compare();
    }

    private void compare() {
        getChildren().forEach(card -> ((OptionCard) card).compare(session.now().layout()));
    }
}
