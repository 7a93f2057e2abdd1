package org.shelterwright.layouts.ledger.transport.securing;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.transit.ChockRail;
import org.shelterwright.catalog.transit.ContainerSeat;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * What blocks hold in one direction.
 *
 * @param holdsN force (N)
 * @param upN force up (N), of spigots that lock
 * @param missing what is not known; {@code null} if all is
 */
public record Blocking(double holdsN, double upN, @Nullable String missing) {
    private static final Blocking NONE = new Blocking(0, 0, null);
    private static final int SPIGOTS = 4;
    private static final int BEARING = 2;

    /** What all blocks of a bundle hold against moving toward a side. */
    public static Blocking of(Bundle bundle, Face toward) {
        Blocking sum = NONE;
        for (Block block : bundle.load().load().blocks()) {
            for (PlacedPiece piece : bundle.pieces()) {
                if (piece.id().equals(block.what())) {
                    sum = sum.plus(of(bundle.load(), piece, block, toward));
                }
            }
        }
        return sum;
    }

    private Blocking plus(Blocking other) {
        return new Blocking(holdsN + other.holdsN, upN + other.upN, missing == null ? other.missing : missing);
    }

    private static Blocking of(PlacedLoad load, PlacedPiece piece, Block block, Face toward) {
        boolean acts = block.toward().contains(toward);
        return switch (block.way()) {
            case BEAMS -> {
                Double each = block.eachN();
                yield !acts
                        ? NONE
                        : each == null
                                ? missing("The beams at " + piece.name() + " state no strength. Give \"eachN\".")
                                : new Blocking(block.count() * each, 0, null);
            }
            case CHOCKS -> acts ? chocks(load, piece, block) : NONE;
            case STOP -> acts ? LeanChain.stop(load, piece, toward) : NONE;
            case SPIGOTS -> spigots(load, piece, acts);
        };
    }

    /** The wheels of both sides stand on strips; the weaker strip counts. */
    private static Blocking chocks(PlacedLoad load, PlacedPiece piece, Block block) {
        Rect foot = piece.foot();
        double weakest = Double.MAX_VALUE;
        for (int side : new int[] {foot.y0(), foot.y1()}) {
            Optional<ChockRail> under = load.car().chockRails().stream()
                    .filter(rail -> rail.area().x0() <= foot.x0()
                            && foot.x1() <= rail.area().x1()
                            && rail.area().y0() <= side
                            && side <= rail.area().y1())
                    .findFirst();
            if (under.isEmpty()) {
                return missing("The wheels of " + piece.name() + " do not stand on a strip of the "
                        + load.car().name() + " on which chocks hold. Move it, or give \"chockRails\".");
            }
            Double each = under.get().chockN();
            if (each == null) {
                return missing("The chock strip \"" + under.get().name() + "\" of the "
                        + load.car().name() + " states no strength. Give \"chockN\".");
            }
            weakest = Math.min(weakest, each);
        }
        return new Blocking(block.count() * weakest, 0, null);
    }

    /** Of four spigots two are counted lengthways and sideways, since not all bear at once. */
    private static Blocking spigots(PlacedLoad load, PlacedPiece piece, boolean acts) {
        Box box = piece.box();
        Optional<ContainerSeat> seat = load.car().seats().stream()
                .filter(one -> one.x() == box.x0() && one.length() == box.x1() - box.x0())
                .findFirst();
        if (seat.isEmpty()) {
            return missing(piece.name() + " stands on no container place of the "
                    + load.car().name() + ". Move it to one, or hold it otherwise.");
        }
        Double each = seat.get().spigotN();
        if (each == null) {
            return missing("The spigots of the " + load.car().name() + " state no strength. Give \"spigotN\".");
        }
        Double up = seat.get().upN();
        return new Blocking(acts ? BEARING * each : 0, up == null ? 0 : SPIGOTS * up, null);
    }

    static Blocking missing(String sentence) {
        return new Blocking(0, 0, sentence);
    }
}
