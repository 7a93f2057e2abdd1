package org.shelterwright.app.desk.space;

import java.util.EnumSet;
import java.util.Set;
import javafx.beans.InvalidationListener;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.ObservableSet;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.space.cut.Section;
import org.shelterwright.app.desk.space.mark.Overlay;
import org.shelterwright.app.desk.space.measure.Distance;
import org.shelterwright.app.desk.space.pick.Picker;

/** What a person has chosen to see: overlays, section plane, hidden units, distances taken. Not part of the layout. */
public final class Showing {
    private final ObjectProperty<Sight> sight;
    private final ObjectProperty<@Nullable Section> section = new SimpleObjectProperty<>(null);
    private final ObservableSet<Overlay> overlays;
    private final ObservableList<Distance> distances;
    private final BooleanProperty measuring;

    public Showing() {
        this(
                new SimpleObjectProperty<>(Sight.ALL),
                FXCollections.observableSet(EnumSet.of(Overlay.CLEAR_ZONES, Overlay.SWINGS)),
                FXCollections.observableArrayList(),
                new SimpleBooleanProperty(false));
    }

    private Showing(
            ObjectProperty<Sight> sight,
            ObservableSet<Overlay> overlays,
            ObservableList<Distance> distances,
            BooleanProperty measuring) {
        this.sight = sight;
        this.overlays = overlays;
        this.distances = distances;
        this.measuring = measuring;
    }

    /** The same choices without the section plane, for a view that is never cut. */
    public Showing uncut() {
        return new Showing(sight, overlays, distances, measuring);
    }

    public ObjectProperty<Sight> sight() {
        return sight;
    }

    public ObjectProperty<@Nullable Section> section() {
        return section;
    }

    public ObservableSet<Overlay> overlays() {
        return overlays;
    }

    /** Distances that were taken; they stay until they are cleared. */
    public ObservableList<Distance> distances() {
        return distances;
    }

    /** Whether clicks take distances. */
    public BooleanProperty measuring() {
        return measuring;
    }

    public void show(Overlay overlay, boolean on) {
        if (on) {
            overlays.add(overlay);
        } else {
            overlays.remove(overlay);
        }
    }

    /** Finds what is shown of the scene on the desk. */
    public Picker picker(Session session) {
        Sight now = sight.get();
        return new Picker(session.now().scene(), session.situation().get(), now::shows, section.get());
    }

    public Set<Overlay> shown() {
        return Set.copyOf(overlays);
    }

    public void onChange(Runnable action) {
        InvalidationListener listener = observable -> action.run();
        sight.addListener(listener);
        section.addListener(listener);
        overlays.addListener(listener);
        distances.addListener(listener);
        measuring.addListener(listener);
    }
}
