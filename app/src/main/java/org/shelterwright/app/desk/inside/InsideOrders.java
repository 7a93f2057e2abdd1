package org.shelterwright.app.desk.inside;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.LockPiece;
import org.shelterwright.layouts.edit.PutPiece;
import org.shelterwright.layouts.edit.TakeOutPiece;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;

/** Changes of the pieces in what is open. Each is one step of the history; what makes no sense is refused with a sentence. */
final class InsideOrders {
    private final InsideDesk desk;
    private final Session session;

    InsideOrders(InsideDesk desk) {
        this.desk = desk;
        session = desk.session();
    }

    /** The chosen piece, if it is in what is open. */
    Optional<Held> chosen() {
        String piece = desk.chosen().get();
        return desk.held().stream().filter(held -> held.id().equals(piece)).findFirst();
    }

    /** Why nothing can be done to the chosen piece; empty if something can. */
    Optional<String> obstacle() {
        if (session.now().tryingOut()) {
            return Optional.of("Finish the drag first.");
        }
        if (desk.opened().get() == null) {
            return Optional.of("Open a rack or a stowage place first.");
        }
        return chosen().isPresent() ? Optional.empty() : Optional.of("Choose a piece in it first.");
    }

    void keepOrLetGo() {
        chosen().ifPresent(held -> {
            boolean kept = !held.place().kept();
            apply((kept ? "Keep " : "Let go ") + held.name(), new LockPiece(held.id(), kept));
        });
    }

    void takeOut() {
        chosen().ifPresent(held -> apply("Take out " + held.name(), new TakeOutPiece(held.id())));
    }

    /**
     * Puts a piece that has no place into what is open: a rack-mounted one at the lowest free height units, a loose one at the
     * lowest free corner.
     *
     * @return why not; empty if it is in
     */
    Optional<String> putIn(String id) {
        Piece piece = desk.kind(id).orElse(null);
        Inside open = desk.opened().get();
        if (piece == null || open == null) {
            return Optional.of("Its kind is not in the catalog.");
        }
        if (piece.rack() != null && !open.racked()) {
            return Optional.of(desk.name(id) + " is rack-mounted. Open a rack for it.");
        }
        if (piece.loose() != null && open.racked()) {
            return Optional.of(desk.name(id) + " is loose. Open a stowage place for it.");
        }
        Optional<PiecePlace> place = open.racked() ? freeUnits(open, id, piece) : freeCorner(open, id, piece);
        place.ifPresent(found -> {
            apply("Put in " + desk.name(id), new PutPiece(found));
            desk.chosen().set(id);
        });
        return place.isPresent()
                ? Optional.empty()
                : Optional.of("There is no room left for " + desk.name(id) + " in " + open.place() + ".");
    }

    /** Moves the chosen piece of a bay so that it begins at another height unit; within the bay. */
    void toUnit(int lowest) {
        chosen().filter(InRack.class::isInstance).map(InRack.class::cast).ifPresent(held -> {
            int most = held.bay().units() - held.mount().units() + 1;
            int to = Math.max(1, Math.min(most, lowest));
            if (to != held.lowest()) {
                apply("Move " + held.name() + " to U" + to, new PutPiece(at(held, to)));
            }
        });
    }

    /** Shifts the chosen loose piece (µm). */
    void shift(Point by) {
        chosen().filter(InPlace.class::isInstance)
                .map(InPlace.class::cast)
                .ifPresent(held -> apply(
                        "Move " + held.name(),
                        new PutPiece(lying(held, held.at().plus(by), held.posture()))));
    }

    /** Lays the chosen loose piece in the next posture. */
    void turn() {
        chosen().filter(InPlace.class::isInstance).map(InPlace.class::cast).ifPresent(held -> {
            Posture[] all = Posture.values();
            Posture next = all[(held.posture().ordinal() + 1) % all.length];
            apply("Turn " + held.name(), new PutPiece(lying(held, held.at(), next)));
        });
    }

    static PiecePlace at(InRack held, int lowest) {
        PiecePlace now = held.place();
        return PiecePlace.inRack(held.id(), now.unit(), now.place(), lowest).withKept(now.kept());
    }

    static PiecePlace lying(InPlace held, Point at, Posture posture) {
        PiecePlace now = held.place();
        return PiecePlace.stowed(held.id(), now.unit(), now.place(), at, posture)
                .withKept(now.kept());
    }

    private void apply(String name, Edit edit) {
        session.apply(name, edit.apply(session.now().history().current()));
    }

    private Optional<PiecePlace> freeUnits(Inside open, String id, Piece piece) {
        RackBay bay = desk.bay().orElseThrow();
        BitSet taken = new BitSet();
        desk.racked().forEach(one -> taken.set(one.lowest(), one.highest() + 1));
        int high = piece.mount().orElseThrow().units();
        for (int lowest = 1; lowest + high - 1 <= bay.units(); lowest++) {
            int next = taken.nextSetBit(lowest);
            if (next < 0 || next >= lowest + high) {
                return Optional.of(PiecePlace.inRack(id, open.unit(), open.place(), lowest));
            }
        }
        return Optional.empty();
    }

    /** Corners are those that the room and the pieces in it make: lowest first. */
    private Optional<PiecePlace> freeCorner(Inside open, String id, Piece piece) {
        Stowage stowage = desk.stowage().orElseThrow();
        List<Box> boxes = desk.stowed().stream().map(InPlace::box).toList();
        List<Point> corners = corners(stowage.inside(), boxes);
        boolean upright = piece.loose() != null && piece.loose().upright();
        for (Point corner : corners) {
            for (Posture posture : Posture.values()) {
                Size size = posture.apply(piece.size());
                Box box = Box.of(corner, size);
                if ((posture.upright() || !upright)
                        && stowage.inside().contains(box)
                        && boxes.stream().noneMatch(box::overlaps)) {
                    return Optional.of(PiecePlace.stowed(id, open.unit(), open.place(), corner, posture));
                }
            }
        }
        return Optional.empty();
    }

    private static List<Point> corners(Box inside, List<Box> boxes) {
        List<List<Integer>> along = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            List<Integer> values = new ArrayList<>(List.of(inside.low(axis)));
            boxes.forEach(box -> values.add(box.high(axis)));
            Collections.sort(values);
            along.add(values.stream().distinct().toList());
        }
        List<Point> corners = new ArrayList<>();
        for (int z : along.get(2)) {
            for (int x : along.get(0)) {
                for (int y : along.get(1)) {
                    corners.add(new Point(x, y, z));
                }
            }
        }
        corners.sort(Comparator.comparingInt(Point::z));
        return corners;
    }
}
