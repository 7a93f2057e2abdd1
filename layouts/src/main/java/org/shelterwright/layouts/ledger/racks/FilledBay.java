package org.shelterwright.layouts.ledger.racks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * A bay of a placed unit with the pieces in it.
 *
 * @param pieces from below
 */
public record FilledBay(PlacedUnit unit, RackBay bay, List<InRack> pieces) {
    public FilledBay {
        pieces = List.copyOf(pieces);
    }

    private record All(List<FilledBay> list) {}

    /** The bays of placed units that hold pieces, in the order of the brief; kept with the scene. */
    public static List<FilledBay> of(Scene scene) {
        return scene.derived(All.class, FilledBay::find).list();
    }

    private static All find(Scene scene) {
        List<FilledBay> found = new ArrayList<>();
        scene.interiors()
                .racks()
                .forEach((id, pieces) -> scene.unit(id).ifPresent(unit -> {
                    for (RackBay bay : unit.item().bays()) {
                        List<InRack> own = pieces.stream()
                                .filter(piece -> piece.bay().name().equals(bay.name()))
                                .sorted(Comparator.comparingInt(InRack::lowest).thenComparing(InRack::id))
                                .toList();
                        if (!own.isEmpty()) {
                            found.add(new FilledBay(unit, bay, own));
                        }
                    }
                }));
        return new All(List.copyOf(found));
    }

    /** Name for people, such as "Telemetry rack 1, front bay"; without the bay if the unit has one alone. */
    public String name() {
        return unit.item().bays().size() == 1 ? unit.name() : unit.name() + ", " + bay.name();
    }

    /** Title of a row of this bay, such as "Load of the bay, Telemetry rack 1". */
    String titled(String what) {
        return what + ", " + name();
    }

    /** What a row of this bay is about, as it was titled; empty if the row is not of this bay. */
    public Optional<String> subject(Row row) {
        String end = titled("");
        return row.units().equals(List.of(unit.id())) && row.title().endsWith(end)
                ? Optional.of(row.title().substring(0, row.title().length() - end.length()))
                : Optional.empty();
    }

    /** The pieces that are more than blanking panels. */
    public List<InRack> working() {
        return pieces.stream().filter(piece -> !piece.mount().blank()).toList();
    }

    /** The height units that are taken, by their number. */
    public BitSet taken() {
        BitSet taken = new BitSet();
        pieces.forEach(piece -> taken.set(piece.lowest(), piece.highest() + 1));
        return taken;
    }

    /** A cuboid of its item in the frame of the body, on station. */
    Box placed(Box box) {
        return unit.pose(Situation.ON_STATION).apply(box, unit.item().size());
    }

    /** Its pieces of which the mass is not stated. */
    List<String> withoutMass(MassModel model) {
        return pieces.stream()
                .filter(piece -> Masses.worstKg(model, piece).isEmpty())
                .map(InRack::name)
                .toList();
    }
}
