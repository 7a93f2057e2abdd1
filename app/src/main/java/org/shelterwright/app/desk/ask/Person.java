package org.shelterwright.app.desk.ask;

import java.util.Optional;

/** Who works at the desk, as acceptances and documents name him or her. */
public interface Person {
    /** The name given last. */
    Optional<String> name();

    /** Remembers a name. */
    void call(String name);
}
