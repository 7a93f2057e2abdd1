package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.layouts.transport.Block;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** Lashings and blocks in a few words. */
final class HoldWords {
    private HoldWords() {}

    /** Such as "Chain 8 mm, front left eye to left 9". */
    static String of(Lashing lashing, LegScene leg) {
        String kind = leg.journey()
                .parts()
                .transit()
                .lashing(lashing.kind())
                .map(LashingKind::name)
                .orElse(lashing.kind());
        String eye = lashing.eye();
        return eye != null
                ? kind + ", " + eye + " to " + lashing.anchor()
                : kind + ", over from " + lashing.anchor() + " to " + lashing.anchor2();
    }

    /** One line for each block of the chosen pieces; of all if none is chosen. */
    static List<String> blocks(PlacedLoad load, Set<String> chosen) {
        return load.load().blocks().stream()
                .filter(block -> chosen.isEmpty() || chosen.contains(block.what()))
                .map(block -> words(load, block, chosen.isEmpty()))
                .toList();
    }

    private static String words(PlacedLoad load, Block block, boolean named) {
        String name = load.piece(block.what()).map(piece -> piece.name()).orElse(block.what());
        String toward = block.toward().stream()
                .map(Face::name)
                .map(word -> word.toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
        String way = switch (block.way()) {
            case CHOCKS -> block.count() + " chocks";
            case BEAMS -> block.count() + (block.count() == 1 ? " beam" : " beams");
            case STOP -> "leans on the end or side of the car";
            case SPIGOTS -> block.count() + " spigots";
        };
        return (named ? name + ": " : "") + way + ", against " + toward;
    }
}
