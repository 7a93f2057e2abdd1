package org.shelterwright.app.desk.hand;

import org.shelterwright.app.desk.session.Session;

/** What can be drawn into a view by hand, such as a line of a list. */
public interface Held {
    /**
     * Takes hold of it.
     *
     * @throws IllegalArgumentException with a sentence if it can be mounted nowhere in the body
     */
    Carry take(Session session);
}
