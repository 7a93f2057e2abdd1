package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.ledger.transport.securing.Proposal;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Proposes how everything on a car is held on all legs that it goes: chocks and direct lashings for vehicles, spigots for containers on
 * their places, tie-downs over rows of crates. What has a lashing or a block already is left as it is where that is enough; where it is not,
 * more is proposed beside it.
 */
final class HoldPlan {
    private static final double WANTED_USE = 0.9;

    private final List<LegScene> legs;
    private final PlacedLoad start;
    private Load load;

    HoldPlan(List<LegScene> legs, PlacedLoad start) {
        this.legs = legs;
        this.start = start;
        this.load = start.load();
    }

    Load planned() {
        if (load.packed()) {
            return load;
        }
        Set<String> held = load.lashings().stream()
                .flatMap(lashing -> lashing.what().stream())
                .collect(Collectors.toSet());
        load.blocks().forEach(block -> held.add(block.what()));
        List<PlacedPiece> open = start.pieces().stream()
                .filter(piece -> !held.contains(piece.id()) || lacks(piece.id()))
                .sorted(Comparator.comparingInt(
                                (PlacedPiece piece) -> piece.box().x0())
                        .thenComparing(PlacedPiece::id))
                .toList();
        Map<Integer, List<PlacedPiece>> rows = new TreeMap<>();
        Map<PlacedPiece, Boolean> vehicles = new LinkedHashMap<>();
        for (PlacedPiece piece : open) {
            if (piece.shape().crate() != null) {
                rows.computeIfAbsent(piece.box().x0(), key -> new ArrayList<>()).add(piece);
            } else {
                vehicles.put(piece, piece.shape().wheeled());
            }
        }
        char letter = (char) ('A' + letters());
        for (Map.Entry<PlacedPiece, Boolean> vehicle : vehicles.entrySet()) {
            letter = held(vehicle.getKey(), vehicle.getValue(), letter);
        }
        if (leans(rows.values().stream().flatMap(List::stream).toList())) {
            rows.values().stream()
                    .flatMap(List::stream)
                    .forEach(piece -> add(new Block(piece.id(), Block.Way.STOP, List.of(Face.FRONT), 1, null)));
        }
        for (List<PlacedPiece> row : rows.values()) {
            load = new TieDowns(this, row, letter++).proposed();
        }
        return load;
    }

    /** Whether what holds a piece is not enough, as far as that can be told. */
    private boolean lacks(String piece) {
        double use = use(load, piece);
        return use > 1 && Double.isFinite(use);
    }

    private char held(PlacedPiece piece, boolean wheeled, char letter) {
        List<Face> all = List.of(Face.FRONT, Face.REAR, Face.LEFT, Face.RIGHT);
        boolean seated = start.car().seats().stream()
                .anyMatch(seat -> seat.x() == piece.box().x0()
                        && seat.length() == piece.box().x1() - piece.box().x0());
        if (!wheeled && seated) {
            add(new Block(piece.id(), Block.Way.SPIGOTS, all, 4, null));
        } else if (wheeled && !start.car().chockRails().isEmpty()) {
            int wheels = 2 * piece.axlePlaces().size();
            add(new Block(piece.id(), Block.Way.CHOCKS, List.of(Face.FRONT, Face.REAR), wheels, null));
        }
        if (use(load, piece.id()) <= WANTED_USE && !wheeled) {
            return letter;
        }
        load = new DirectLashings(this, piece, letter).proposed();
        return (char) (letter + 1);
    }

    /** Whether crates stand one against the other up to a front that holds. */
    private boolean leans(List<PlacedPiece> crates) {
        if (crates.isEmpty() || start.car().stops().stream().noneMatch(stop -> stop.side() == Face.FRONT)) {
            return false;
        }
        Load tried = load;
        for (PlacedPiece crate : crates) {
            List<Block> blocks = new ArrayList<>(tried.blocks());
            blocks.add(new Block(crate.id(), Block.Way.STOP, List.of(Face.FRONT), 1, null));
            tried = tried.withBlocks(blocks);
        }
        Load all = tried;
        return crates.stream().allMatch(crate -> Double.isFinite(use(all, crate.id())));
    }

    private void add(Block block) {
        boolean there =
                load.blocks().stream().anyMatch(one -> one.what().equals(block.what()) && one.way() == block.way());
        if (!there) {
            List<Block> blocks = new ArrayList<>(load.blocks());
            blocks.add(block);
            load = load.withBlocks(blocks);
        }
    }

    /** How many letters are taken by lashings that are there. */
    private int letters() {
        return load.lashings().stream()
                .mapToInt(lashing -> lashing.key().charAt(0) - 'A' + 1)
                .filter(number -> number > 0 && number < 26)
                .max()
                .orElse(0);
    }

    Load load() {
        return load;
    }

    List<LegScene> legs() {
        return legs;
    }

    PlacedLoad placed(Load changed) {
        return new PlacedLoad(changed, start.car(), start.pieces());
    }

    /** Greatest use of what holds a piece over all legs. */
    double use(Load changed, String piece) {
        PlacedLoad placed = placed(changed);
        return legs.stream()
                .mapToDouble(leg -> Proposal.use(leg, placed, piece))
                .max()
                .orElse(0);
    }

    boolean enough(double use) {
        return use <= WANTED_USE;
    }

    boolean fits(Load changed, Lashing lashing) {
        PlacedLoad placed = placed(changed);
        return legs.stream().allMatch(leg -> Proposal.fits(leg, placed, lashing));
    }

    static Load with(Load load, Lashing lashing) {
        List<Lashing> lashings = new ArrayList<>(load.lashings());
        lashings.add(lashing);
        return load.withLashings(lashings);
    }

    static boolean uses(Load load, String anchor) {
        return load.lashings().stream()
                .anyMatch(lashing -> lashing.anchor().equals(anchor) || anchor.equals(lashing.anchor2()));
    }
}
