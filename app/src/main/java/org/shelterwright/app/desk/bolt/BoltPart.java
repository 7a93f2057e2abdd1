package org.shelterwright.app.desk.bolt;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.SpacePart;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.work.Work;

/** The parts of the bolt-down page. Its commands are added when it is made, the rest is made when it is asked for. */
public final class BoltPart {
    private final BoltDesk desk;
    private final Player player;
    private final Commands commands;
    private final Theme theme;
    private final StepList steps;

    /** @param work of its own: ways in take their time */
    public BoltPart(Session session, Commands commands, Work work, Theme theme) {
        this.commands = commands;
        this.theme = theme;
        desk = new BoltDesk(session, work);
        player = new Player(desk);
        steps = new StepList(desk, commands);
        new BoltCommands(desk, player, steps::fitters).addTo(commands);
    }

    /** Whether the page is looked at: only then are steps worked out. */
    public void show(boolean wanted) {
        desk.show(wanted);
    }

    public Region steps() {
        return steps.node();
    }

    /** Makes the view. */
    public Region middle() {
        return SpacePart.supported() ? new BoltSpace(desk, player, commands, theme).node() : noSpace();
    }

    private static Region noSpace() {
        Label title = new Label("This display draws no 3D");
        title.getStyleClass().add("title");
        Label sentence = new Label("Every step is in the list and on its card.");
        sentence.getStyleClass().add("second");
        VBox box = new VBox(12, title, sentence);
        box.setAlignment(Pos.CENTER);
        return box;
    }

    /** Makes the strip below the view. */
    public Region strip() {
        return new OrderStrip(desk, theme).node();
    }

    /** Makes the card of the step that is looked at. */
    public Region card() {
        return new StepCard(desk, theme).node();
    }
}
