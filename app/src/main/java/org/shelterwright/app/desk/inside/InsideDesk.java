package org.shelterwright.app.desk.inside;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Which inside is open and which piece is chosen; without controls. It closes when its unit is taken out. */
public final class InsideDesk {
    private final Session session;
    private final ReadOnlyObjectWrapper<@Nullable Inside> opened = new ReadOnlyObjectWrapper<>(null);
    private final ObjectProperty<@Nullable String> chosen = new SimpleObjectProperty<>(null);

    public InsideDesk(Session session) {
        this.session = session;
        session.standing().addListener((observable, before, now) -> follow());
    }

    ReadOnlyObjectProperty<@Nullable Inside> opened() {
        return opened.getReadOnlyProperty();
    }

    /** Id of the piece that is looked at; {@code null} if none is. */
    ObjectProperty<@Nullable String> chosen() {
        return chosen;
    }

    Session session() {
        return session;
    }

    /** Why nothing can be opened now; empty if the inside of the selected unit can. */
    Optional<String> obstacle() {
        if (session.now().tryingOut()) {
            return Optional.of("Finish the drag first.");
        }
        String leader = session.selection().leader().orElse(null);
        if (leader == null || session.selection().units().get().size() != 1) {
            return Optional.of("Select the one unit that is to be opened.");
        }
        PlacedUnit unit = session.now().scene().unit(leader).orElse(null);
        if (unit == null) {
            return Optional.of("The selected unit is not placed yet.");
        }
        return Inside.of(leader, unit.item()).isEmpty()
                ? Optional.of(unit.name() + " has no bay and no stowage place.")
                : Optional.empty();
    }

    /** Opens the selected unit: the first of its places that holds a piece, or else its first. */
    void openSelected() {
        String unit = session.selection().leader().orElseThrow();
        List<Inside> all = places(unit);
        Interiors interiors = interiors();
        open(all.stream()
                .filter(one -> interiors.held(unit).stream()
                        .anyMatch(held -> held.place().place().equals(one.place())))
                .findFirst()
                .orElse(all.get(0)));
    }

    void open(Inside inside) {
        opened.set(inside);
        keepChosen();
    }

    /** Goes to a piece: its unit is selected, and its place opened; a piece without a place is chosen alone. */
    public void goTo(String piece) {
        Held held = find(piece).orElse(null);
        if (held != null) {
            session.selection().only(held.place().unit());
            opened.set(new Inside(held.place().unit(), held.place().place(), held instanceof InRack));
        }
        chosen.set(piece);
    }

    public void close() {
        session.giveUp();
        opened.set(null);
        chosen.set(null);
    }

    /** Every bay and stowage place of a unit; empty if it is not placed. */
    List<Inside> places(String unit) {
        return session.now()
                .scene()
                .unit(unit)
                .map(placed -> Inside.of(unit, placed.item()))
                .orElse(List.of());
    }

    Optional<PlacedUnit> unit() {
        Inside now = opened.get();
        return now == null ? Optional.empty() : session.now().scene().unit(now.unit());
    }

    Optional<RackBay> bay() {
        Inside now = opened.get();
        return now == null || !now.racked()
                ? Optional.empty()
                : unit().flatMap(unit -> unit.item().bay(now.place()));
    }

    Optional<Stowage> stowage() {
        Inside now = opened.get();
        return now == null || now.racked()
                ? Optional.empty()
                : unit().flatMap(unit -> unit.item().stowage(now.place()));
    }

    /** The pieces in what is open, in the order of the brief. */
    List<Held> held() {
        Inside now = opened.get();
        return now == null
                ? List.of()
                : interiors().held(now.unit()).stream()
                        .filter(held ->
                                held.place().place().equals(now.place()) && held instanceof InRack == now.racked())
                        .toList();
    }

    List<InRack> racked() {
        return held().stream()
                .filter(InRack.class::isInstance)
                .map(InRack.class::cast)
                .toList();
    }

    List<InPlace> stowed() {
        return held().stream()
                .filter(InPlace.class::isInstance)
                .map(InPlace.class::cast)
                .toList();
    }

    /** The pieces of the brief that have no place yet. */
    public List<PieceSpec> toPlace() {
        List<PieceSpec> all = new ArrayList<>(interiors().rackedToPlace());
        all.addAll(interiors().looseToPlace());
        return all;
    }

    /** The pieces in what is open as they stand when nothing is tried out: what a drag starts from. */
    List<Held> heldAtRest() {
        Inside now = opened.get();
        return now == null
                ? List.of()
                : Interiors.of(session.now().history().current()).held(now.unit()).stream()
                        .filter(held ->
                                held.place().place().equals(now.place()) && held instanceof InRack == now.racked())
                        .toList();
    }

    /** A piece at its place, wherever that is. */
    public Optional<Held> find(String piece) {
        PiecePlace place = session.now().layout().contents().places().get(piece);
        return place == null
                ? Optional.empty()
                : interiors().held(place.unit()).stream()
                        .filter(held -> held.id().equals(piece))
                        .findFirst();
    }

    Optional<Piece> kind(String piece) {
        return session.now()
                .layout()
                .brief()
                .listed()
                .piece(piece)
                .flatMap(spec -> Optional.ofNullable(
                        session.now().layout().contents().kinds().get(spec.kind())));
    }

    String name(String piece) {
        return session.now()
                .layout()
                .brief()
                .listed()
                .piece(piece)
                .map(PieceSpec::name)
                .orElse(piece);
    }

    private Interiors interiors() {
        return session.now().scene().interiors();
    }

    private void follow() {
        Inside now = opened.get();
        if (now != null && !places(now.unit()).contains(now)) {
            opened.set(null);
        }
        keepChosen();
    }

    private void keepChosen() {
        String piece = chosen.get();
        boolean known = piece != null
                && session.now().layout().brief().listed().piece(piece).isPresent();
        boolean elsewhere = known
                && opened.get() != null
                && find(piece)
                        .filter(held -> !Objects.equals(
                                opened.get(),
                                new Inside(held.place().unit(), held.place().place(), held instanceof InRack)))
                        .isPresent();
        if (!known || elsewhere) {
            chosen.set(null);
        }
    }
}
