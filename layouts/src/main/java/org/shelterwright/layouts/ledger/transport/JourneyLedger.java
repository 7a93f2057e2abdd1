package org.shelterwright.layouts.ledger.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** Every limit of a journey, leg by leg. */
public record JourneyLedger(List<LegLedger> legs) {
    /** The rows of one leg. */
    public record LegLedger(Leg leg, int number, Ledger ledger) {}

    /**
     * What a leg comes to for one thing that goes: the table of a journey.
     *
     * @param unit id of a piece or load
     * @param governing the row that is tightest for it
     */
    public record Cell(LegLedger leg, String unit, Row governing) {}

    public JourneyLedger {
        legs = List.copyOf(legs);
    }

    /** All rows as one ledger. */
    public Ledger all() {
        return new Ledger(
                legs.stream().flatMap(one -> one.ledger().rows().stream()).toList());
    }

    /** For each leg and each thing on it, loads after what is on them: the row that governs. */
    public List<Cell> table(List<LegScene> scenes) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            LegLedger leg = legs.get(i);
            for (LegScene.Driven driven : scenes.get(i).drives()) {
                governing(leg, driven.vehicle().id()).ifPresent(cells::add);
                driven.trailer()
                        .flatMap(trailer -> governing(leg, trailer.id()))
                        .ifPresent(cells::add);
            }
            for (PlacedLoad load : scenes.get(i).loads()) {
                load.pieces().forEach(piece -> governing(leg, piece.id()).ifPresent(cells::add));
                governing(leg, load.id()).ifPresent(cells::add);
            }
        }
        return cells;
    }

    /**
     * Things of one leg that the same row governs.
     *
     * @param units ids, in the order of the table
     */
    public record Group(LegLedger leg, List<String> units, Row governing) {
        public Group {
            units = List.copyOf(units);
        }
    }

    /** The table with things of one leg together that the same row governs. */
    public List<Group> grouped(List<LegScene> scenes) {
        Map<Row, List<Cell>> byRow = new LinkedHashMap<>();
        for (Cell cell : table(scenes)) {
            byRow.computeIfAbsent(cell.governing(), key -> new ArrayList<>()).add(cell);
        }
        List<Group> groups = new ArrayList<>();
        byRow.forEach((row, cells) -> groups.add(new Group(
                cells.get(0).leg(), cells.stream().map(Cell::unit).distinct().toList(), row)));
        return groups;
    }

    private static Optional<Cell> governing(LegLedger leg, String unit) {
        return leg.ledger().rows().stream()
                .filter(row -> row.units().contains(unit))
                .min(Comparator.comparing(Row::verdict))
                .map(row -> new Cell(leg, unit, row));
    }

    /** The worst verdict of all rows; met if there are none. */
    public Verdict worst() {
        return all().worst();
    }
}
