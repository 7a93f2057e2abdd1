package org.shelterwright.app.desk.hand.order;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.space.Lengths;

/** All orders of editing by hand. */
public final class Orders {
    private final Session session;
    private final IntegerProperty step = new SimpleIntegerProperty(10 * Lengths.MM);

    public Orders(Session session) {
        this.session = session;
    }

    /** How far a unit moves by one press of an arrow (µm). */
    public IntegerProperty step() {
        return step;
    }

    /** A command for each order. */
    public List<Command> commands() {
        List<Command> all = new ArrayList<>();
        all.addAll(new MoveOrders(session, step::get).all());
        all.addAll(new MountOrders(session).all());
        all.addAll(new PinOrders(session).all());
        all.addAll(new ArrangeOrders(session).all());
        all.addAll(new PlaceOrders(session).all());
        all.addAll(new SelectOrders(session).all());
        return all;
    }
}
