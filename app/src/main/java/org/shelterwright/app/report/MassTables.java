package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.statement.Inertia;
import org.shelterwright.layouts.statement.MassLine;
import org.shelterwright.layouts.statement.MassStatement;
import org.shelterwright.layouts.statement.StateTotal;

/** A mass statement as tables: its lines in the columns of a weight and balance sheet, its load states, and its axles. */
final class MassTables {

    private MassTables() {}

    static Table lines(MassStatement statement) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        statement.lines().forEach(line -> rows.add(row(line, "body")));
        statement.trailer().forEach(line -> rows.add(row(line, "trailer")));
        statement
                .groups()
                .forEach(group -> rows.add(Arrays.asList(
                        group.group(),
                        "subtotal",
                        "",
                        null,
                        null,
                        "",
                        null,
                        group.massKg(),
                        null,
                        "",
                        null,
                        null,
                        null,
                        group.momentXKgM(),
                        group.momentYKgM(),
                        group.momentZKgM(),
                        "on the road, tanks full")));
        return new Table(
                "Mass lines",
                List.of(
                        "group",
                        "item",
                        "position label",
                        "quantity",
                        "unit mass kg",
                        "source",
                        "growth share",
                        "mass with growth kg",
                        "uncertainty kg",
                        "datum of",
                        "arm x mm",
                        "arm y mm",
                        "arm z mm",
                        "moment x kg·m",
                        "moment y kg·m",
                        "moment z kg·m",
                        "counts"),
                rows);
    }

    static Table states(MassStatement statement) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (StateTotal total : statement.states()) {
            Inertia inertia = total.inertia();
            rows.add(Arrays.asList(
                    total.what(),
                    total.state(),
                    total.massKg(),
                    total.uncertaintyKg(),
                    total.uncertaintyRssKg(),
                    total.xMm(),
                    total.yMm(),
                    total.zMm(),
                    inertia == null ? null : inertia.xx(),
                    inertia == null ? null : inertia.yy(),
                    inertia == null ? null : inertia.zz()));
        }
        return new Table(
                "Load states",
                List.of(
                        "what",
                        "load state",
                        "mass kg",
                        "uncertainty, sum kg",
                        "uncertainty, root of squares kg",
                        "centre x mm",
                        "centre y mm",
                        "centre z mm",
                        "inertia xx kg·m²",
                        "inertia yy kg·m²",
                        "inertia zz kg·m²"),
                rows);
    }

    static Table axles(MassStatement statement) {
        List<List<@Nullable Object>> rows = statement.states().stream()
                .flatMap(total -> total.axles().stream().map(axle -> axle(total, axle)))
                .toList();
        return new Table(
                "Axles",
                List.of(
                        "what",
                        "load state",
                        "axle",
                        "left kg",
                        "right kg",
                        "load kg",
                        "rating kg",
                        "reserve kg",
                        "reserve share"),
                rows);
    }

    private static List<@Nullable Object> axle(StateTotal total, StateTotal.AxleTotal axle) {
        Double reserve = axle.reserveKg();
        Double rating = axle.ratingKg();
        return Arrays.asList(
                total.what(),
                total.state(),
                axle.axle(),
                axle.leftKg(),
                axle.rightKg(),
                axle.loadKg(),
                rating,
                reserve,
                reserve == null || rating == null || rating == 0 ? null : reserve / rating);
    }

    private static List<@Nullable Object> row(MassLine line, String datum) {
        Point arm = line.arm();
        List<@Nullable Object> row = new ArrayList<>(Arrays.<@Nullable Object>asList(
                line.group(),
                line.item(),
                line.label(),
                line.quantity(),
                line.unitMassKg(),
                String.valueOf(line.source()),
                line.growthShare(),
                line.massKg(),
                line.uncertaintyKg(),
                datum));
        row.addAll(
                arm == null
                        ? Arrays.<@Nullable Object>asList(null, null, null)
                        : Stream.of(arm.x(), arm.y(), arm.z())
                                .map(Lengths::millimetres)
                                .toList());
        row.addAll(Arrays.<@Nullable Object>asList(
                line.momentXKgM(),
                line.momentYKgM(),
                line.momentZKgM(),
                line.when().words()));
        return row;
    }
}
