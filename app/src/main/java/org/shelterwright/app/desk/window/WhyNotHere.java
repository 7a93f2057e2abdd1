package org.shelterwright.app.desk.window;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.hand.Breakage;
import org.shelterwright.app.desk.hand.Carry;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Asks why the selected unit does not stand where the pointer is: it is shown there, with what breaks and what would mend
 * it, until it is put there or left where it was.
 */
final class WhyNotHere {
    private static final double WIDTH = 380;
    private static final int MOST = 6;

    private final Pane over;
    private final Session session;
    private final Theme theme;
    private final MiddlePart middle;

    /** @param middle knows what was pointed at last; if nothing was, the middle of the floor is asked about */
    WhyNotHere(Pane over, Session session, Theme theme, MiddlePart middle) {
        this.over = over;
        this.session = session;
        this.theme = theme;
        this.middle = middle;
    }

    void addTo(Commands commands) {
        commands.add(new Command(
                "edit.why-not-here",
                "Why not here",
                List.of("reason", "hold", "place", "pointer"),
                List.of("Q"),
                this::obstacle,
                this::ask));
    }

    private Optional<String> obstacle() {
        if (session.now().tryingOut()) {
            return Optional.of("Finish the drag first.");
        }
        return session.selection().units().get().size() == 1
                ? Optional.empty()
                : Optional.of("Select the one unit that you ask about, and point at a place.");
    }

    private void ask() {
        String unit = session.selection().leader().orElseThrow();
        Ledger before = session.now().ledger();
        Carry carry = Carry.take(session, unit);
        middle.answering(true);
        Optional<Point> pointed = middle.place();
        carry.to(pointed.orElseGet(this::onFloor));
        Breakage breakage = Breakage.of(before, session.now().ledger(), Set.of(unit));
        PlacedUnit held = session.now().scene().unit(unit).orElseThrow();
        VBox lines = new VBox(8);
        lines.getChildren().setAll(HeldCard.lines(breakage, theme, MOST));
        lines.setPadding(new Insets(0, 14, 8, 14));
        Button put = new Button("Put it here");
        put.getStyleClass().add("primary");
        Button leave = new Button("Leave it");
        HBox orders = new HBox(8, put, leave);
        orders.setPadding(new Insets(4, 14, 8, 14));
        SheetOver sheet = new SheetOver(
                over,
                "Why not here",
                (pointed.isPresent()
                                ? ""
                                : "Nothing of the body is pointed at, so this is about the middle of the floor. ")
                        + held.name() + " " + place(held) + ".",
                new VBox(lines, orders),
                WIDTH);
        sheet.onClosed(() -> {
            carry.cancel();
            middle.answering(false);
        });
        sheet.low();
        put.setOnAction(event -> {
            carry.drop();
            sheet.close();
        });
        leave.setOnAction(event -> sheet.close());
        sheet.setId("why-not-here");
        sheet.open(put);
    }

    private static String place(PlacedUnit unit) {
        Point at = unit.pose(Situation.ON_STATION).at();
        return "held at x " + Lengths.format(at.x()) + ", y " + Lengths.format(at.y()) + ", z " + Lengths.format(at.z())
                + " mm, turn "
                + String.format(
                        Locale.ROOT,
                        "%d°",
                        unit.pose(Situation.ON_STATION).yaw().degrees());
    }

    private Point onFloor() {
        return session.now().scene().body().inside().box().face(Face.BOTTOM).centre();
    }
}
