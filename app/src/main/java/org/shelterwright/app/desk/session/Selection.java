package org.shelterwright.app.desk.session;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Layout;

/** The one selection that list, view and ledger share: some units, the last chosen one leading, some wires, and one finding. */
public final class Selection {
    private final ReadOnlyObjectWrapper<Set<String>> units = new ReadOnlyObjectWrapper<>(Set.of());
    private final ReadOnlyObjectWrapper<Set<String>> wires = new ReadOnlyObjectWrapper<>(Set.of());
    private final ObjectProperty<@Nullable Finding> finding = new SimpleObjectProperty<>(null);

    /** Ids of the selected units, placed or still to be placed, in the order of choosing. */
    public ReadOnlyObjectProperty<Set<String>> units() {
        return units.getReadOnlyProperty();
    }

    /** The finding that is looked at; {@code null} if none. */
    public ObjectProperty<@Nullable Finding> finding() {
        return finding;
    }

    /** Ids of the wires that are looked at. */
    public ReadOnlyObjectProperty<Set<String>> wires() {
        return wires.getReadOnlyProperty();
    }

    public void wires(Set<String> chosen) {
        if (!chosen.equals(wires.get())) {
            wires.set(Set.copyOf(chosen));
        }
    }

    /** The unit chosen last. */
    public Optional<String> leader() {
        String last = null;
        for (String unit : units.get()) {
            last = unit;
        }
        return Optional.ofNullable(last);
    }

    public boolean holds(String unit) {
        return units.get().contains(unit);
    }

    public void only(String unit) {
        set(Set.of(unit));
    }

    /** Adds a unit, or takes it out if it is selected. */
    public void toggle(String unit) {
        Set<String> changed = new LinkedHashSet<>(units.get());
        if (!changed.remove(unit)) {
            changed.add(unit);
        }
        set(changed);
    }

    public void set(Collection<String> chosen) {
        Set<String> changed = new LinkedHashSet<>(chosen);
        if (!changed.equals(units.get())) {
            units.set(Collections.unmodifiableSet(changed));
        }
    }

    public void clear() {
        set(Set.of());
        wires(Set.of());
        finding.set(null);
    }

    void keepOnly(Layout layout) {
        Set<String> known = layout.brief().units().stream().map(UnitSpec::id).collect(Collectors.toSet());
        if (!known.containsAll(units.get())) {
            set(units.get().stream().filter(known::contains).toList());
        }
        Set<String> asked = layout.brief().wires().stream().map(Wire::id).collect(Collectors.toSet());
        if (!asked.containsAll(wires.get())) {
            wires(wires.get().stream().filter(asked::contains).collect(Collectors.toSet()));
        }
    }
}
