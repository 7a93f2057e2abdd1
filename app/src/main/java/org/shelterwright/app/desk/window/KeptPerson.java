package org.shelterwright.app.desk.window;

import java.util.Optional;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.preferences.PreferencesFile;

/** Who works here, as the preferences remember it. */
record KeptPerson(PreferencesFile preferences) implements Person {
    @Override
    public Optional<String> name() {
        return Optional.ofNullable(preferences.now().person());
    }

    @Override
    public void call(String name) {
        preferences.change(now -> now.withPerson(name));
    }
}
