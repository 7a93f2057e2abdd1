package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.ledger.transport.securing.Holds;
import org.shelterwright.layouts.ledger.transport.securing.Rope;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.solver.transport.WaysToGo.Way;

/** The tables of a journey. Lengths in mm. */
final class JourneyTables {
    private JourneyTables() {}

    static Table governing(JourneyIssue issue) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (JourneyLedger.Cell cell : issue.ledger().table(issue.scene().legs())) {
            Row row = cell.governing();
            rows.add(Arrays.asList(
                    cell.leg().number(),
                    cell.leg().leg().mode().word(),
                    issue.journey().nameOf(cell.unit()),
                    row.verdict().word(),
                    row.title(),
                    row.demand(),
                    row.capacity(),
                    row.share(),
                    row.unit(),
                    row.source().text()));
        }
        return new Table(
                "Legs",
                List.of("leg", "mode", "what", "verdict", "governing", "demand", "capacity", "use", "unit", "source"),
                rows);
    }

    static Table ledger(JourneyIssue issue) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (LegLedger leg : issue.ledger().legs()) {
            for (Row row : leg.ledger().rows()) {
                rows.add(Arrays.asList(
                        leg.number(),
                        row.verdict().word(),
                        row.limit(),
                        row.title(),
                        issue.names(row.units()),
                        row.state(),
                        row.demand(),
                        row.capacity(),
                        row.share(),
                        row.unit(),
                        row.finding(),
                        row.mend(),
                        row.source().text()));
            }
        }
        return new Table(
                "Ledger",
                List.of(
                        "leg",
                        "verdict",
                        "limit",
                        "title",
                        "what",
                        "state",
                        "demand",
                        "capacity",
                        "use",
                        "unit",
                        "finding",
                        "mend",
                        "source"),
                rows);
    }

    static Table positions(JourneyIssue issue) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (LegScene leg : issue.scene().legs()) {
            for (PlacedLoad load : leg.loads()) {
                for (PlacedPiece piece : load.pieces()) {
                    Point centre = piece.centre();
                    rows.add(Arrays.asList(
                            leg.number(),
                            load.name(),
                            load.car().name(),
                            piece.name(),
                            piece.box().x0() / 1000.0,
                            piece.box().y0() / 1000.0,
                            piece.box().z0() / 1000.0,
                            piece.pose().yaw().degrees(),
                            piece.shape().massKg(),
                            centre == null ? null : centre.x() / 1000.0,
                            centre == null ? null : centre.y() / 1000.0,
                            centre == null ? null : centre.z() / 1000.0));
                }
            }
        }
        return new Table(
                "Positions",
                List.of(
                        "leg",
                        "load",
                        "car",
                        "what",
                        "x",
                        "y",
                        "z",
                        "turned °",
                        "mass kg",
                        "centre x",
                        "centre y",
                        "centre z"),
                rows);
    }

    static Table lashings(JourneyIssue issue) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (LegScene leg : issue.scene().legs()) {
            for (PlacedLoad load : leg.loads()) {
                Map<String, Double> forces = Holds.forces(leg, load);
                for (Rope rope : Rope.of(leg, load)) {
                    Double force = forces.get(rope.lashing().key());
                    rows.add(Arrays.asList(
                            leg.number(),
                            load.name(),
                            rope.lashing().key(),
                            rope.kind().name(),
                            issue.names(rope.lashing().what()),
                            rope.lashing().eye(),
                            rope.lashing().anchor(),
                            rope.lashing().anchor2(),
                            rope.angle(),
                            rope.length() / 1000,
                            force == null ? null : Double.valueOf(force / 1000),
                            rope.bearsN() == null ? null : Double.valueOf(rope.bearsN() / 1000)));
                }
            }
        }
        return new Table(
                "Lashings",
                List.of(
                        "leg",
                        "load",
                        "key",
                        "kind",
                        "what",
                        "eye",
                        "anchor",
                        "second anchor",
                        "angle °",
                        "length mm",
                        "force kN",
                        "bears kN"),
                rows);
    }

    static Table ways(JourneyIssue issue, List<Way> ways) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (Way way : ways) {
            rows.add(Arrays.asList(
                    issue.names(way.pieces()),
                    way.car().name(),
                    way.mode().word(),
                    way.verdict().word(),
                    way.governing().title(),
                    way.governing().share(),
                    way.governing().finding(),
                    way.governing().mend()));
        }
        return new Table(
                "Ways to go", List.of("what", "car", "mode", "verdict", "governing", "use", "finding", "mend"), rows);
    }
}
