package org.shelterwright.app.desk.bolt;

import javafx.scene.layout.Region;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.SpacePart;
import org.shelterwright.app.desk.style.Theme;
import org.shelterwright.app.desk.work.Work;

/** The parts of the bolt-down page. Its commands are added when it is made. */
public final class BoltPart {
    private final BoltDesk desk;
    private final StepList steps;
    private final Region middle;
    private final OrderStrip strip;
    private final StepCard card;

    /** @param work of its own: ways in take their time */
    public BoltPart(Session session, Commands commands, Work work, Theme theme) {
        desk = new BoltDesk(session, work);
        Player player = new Player(desk);
        steps = new StepList(desk, commands);
        new BoltCommands(desk, player, steps::fitters).addTo(commands);
        middle = SpacePart.supported() ? new BoltSpace(desk, player, commands, theme).node() : new Region();
        strip = new OrderStrip(desk, theme);
        card = new StepCard(desk, theme);
    }

    /** Whether the page is looked at: only then are steps worked out. */
    public void show(boolean wanted) {
        desk.show(wanted);
    }

    public Region steps() {
        return steps.node();
    }

    public Region middle() {
        return middle;
    }

    public Region strip() {
        return strip.node();
    }

    public Region card() {
        return card.node();
    }
}
