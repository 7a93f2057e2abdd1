package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.hand.LengthText;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.edit.JourneyEdit;
import org.shelterwright.layouts.transport.edit.PinStand;
import org.shelterwright.layouts.transport.edit.PutStand;
import org.shelterwright.layouts.transport.edit.TakeOff;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;

/** The selected piece in figures, and changes of it by figures. Needs no window. */
final class StandSheet {
    private final JourneySession session;

    StandSheet(JourneySession session) {
        this.session = session;
    }

    /** Id of the selected piece or container. */
    Optional<String> chosen() {
        return Optional.ofNullable(session.focus().get()).flatMap(Focus::leader);
    }

    /** The selected piece where it stands on the car that is shown; empty if it does not. */
    Optional<PlacedPiece> placed() {
        return session.load().flatMap(load -> chosen().flatMap(load::piece));
    }

    /** The shape of what is selected, wherever it is. */
    Optional<Shape> shape() {
        return placed().map(PlacedPiece::shape)
                .or(() -> chosen().flatMap(
                                id -> session.now().flatMap(now -> now.scene().shape(id))));
    }

    /** The load of the leg that it stands on; empty if it stands on none. */
    Optional<PlacedLoad> under() {
        return chosen().flatMap(id -> session.leg()
                .flatMap(leg -> leg.loads().stream()
                        .filter(load -> load.piece(id).isPresent())
                        .findFirst()));
    }

    /** The loads of the leg, on which it may be put. */
    List<Load> loads() {
        return session.leg()
                .map(leg -> leg.loads().stream()
                        .map(PlacedLoad::load)
                        .filter(load -> chosen().filter(load.id()::equals).isEmpty())
                        .toList())
                .orElse(List.of());
    }

    /** A place as it is shown. */
    String place(Axis axis) {
        return placed().map(
                        piece -> LengthUnit.MILLIMETRE.format(piece.pose().at().along(axis)))
                .orElse("");
    }

    /** Sets a place as it was typed; gives a sentence if it is no length. */
    Optional<String> setPlace(Axis axis, String text) {
        PlacedPiece piece = placed().orElse(null);
        if (piece == null) {
            return Optional.of("Select a piece that stands on this car first.");
        }
        try {
            int length = LengthText.parse(text, LengthUnit.MILLIMETRE);
            Pose pose = piece.pose();
            return apply(put(piece, new Pose(pose.at().with(axis, length), pose.yaw())));
        } catch (IllegalArgumentException wrong) {
            return Optional.of(String.valueOf(wrong.getMessage()));
        }
    }

    /** Moves it along an axis (µm). */
    Optional<String> nudge(Axis axis, int by) {
        PlacedPiece piece = placed().orElse(null);
        if (piece == null) {
            return Optional.of("Select a piece that stands on this car first.");
        }
        Pose pose = piece.pose();
        return apply(put(piece, new Pose(pose.at().with(axis, pose.at().along(axis) + by), pose.yaw())));
    }

    /** Turns it by a quarter about its middle, onto whole millimetres. */
    Optional<String> turn() {
        PlacedPiece piece = placed().orElse(null);
        if (piece == null) {
            return Optional.of("Select a piece that stands on this car first.");
        }
        QuarterTurn next = QuarterTurn.values()[(piece.pose().yaw().ordinal() + 1) % QuarterTurn.values().length];
        Box before = piece.box();
        Box after = new Pose(Point.ORIGIN, next).outline(piece.shape().size());
        Point at = new Point(
                whole(before.x0() + (before.x1() - before.x0() - (after.x1() - after.x0())) / 2),
                whole(before.y0() + (before.y1() - before.y0() - (after.y1() - after.y0())) / 2),
                before.z0());
        return apply(put(piece, new Pose(at, next)));
    }

    boolean pinned() {
        return placed().map(piece -> piece.stand().pinned()).orElse(false);
    }

    Optional<String> pin(boolean on) {
        return under().map(load -> apply(new PinStand(load.id(), chosen().orElse(""), on)))
                .orElse(Optional.of("It stands on no car of this leg yet. Put it on one first."));
    }

    /** Takes it off the car of this leg. */
    Optional<String> takeOff() {
        return under().map(load -> apply(new TakeOff(load.id(), chosen().orElse(""))))
                .orElse(Optional.of("It stands on no car of this leg."));
    }

    /** Puts it on another load, behind the foremost free length of its deck; if there is none, at its rear end. */
    Optional<String> putOn(String id) {
        PlacedLoad target = session.leg()
                .flatMap(leg -> leg.loads().stream()
                        .filter(load -> load.id().equals(id))
                        .findFirst())
                .orElse(null);
        Shape shape = shape().orElse(null);
        if (target == null || shape == null) {
            return Optional.of("Select a piece, and a car that goes on this leg.");
        }
        Point at = FreeDeck.place(target, shape);
        Optional<String> refused = apply(new PutStand(id, shape.id(), Pose.at(at)));
        if (refused.isEmpty()) {
            session.now().ifPresent(now -> session.look(focus -> focus.onLoad(id, now.scene())));
        }
        return refused;
    }

    private PutStand put(PlacedPiece piece, Pose pose) {
        return new PutStand(session.load().orElseThrow().id(), piece.id(), pose);
    }

    private Optional<String> apply(JourneyEdit edit) {
        try {
            session.apply(edit);
            return Optional.empty();
        } catch (IllegalArgumentException refusal) {
            return Optional.of(String.valueOf(refusal.getMessage()));
        }
    }

    private static int whole(int micrometres) {
        return Math.floorDiv(micrometres + 500, 1000) * 1000;
    }
}
