package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.elevation.Codes;
import org.shelterwright.app.tables.Table;
import org.shelterwright.catalog.piece.DangerousGoods;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.RackMount;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.scene.Scene;

/** The pieces of a layout as a table; its headers are those by which a list of pieces is read. */
final class PieceTables {
    private static final List<String> HEADS = List.of(
            "Code", "Id", "Name", "Kind", "Depth [mm]", "Width [mm]", "Height [mm]", "Mass [kg]", "Height units", "Quantity",
            "Fragile", "Upright", "Class", "Unit", "Place", "Where", "Task", "Order", "Urgency", "Owner");

    private PieceTables() {}

    static Table of(Scene scene) {
        Codes codes = new Codes(scene);
        List<List<@Nullable Object>> rows = new ArrayList<>();
        Map<String, Held> held = new LinkedHashMap<>();
        for (UnitSpec unit : scene.brief().units()) {
            scene.interiors().held(unit.id()).forEach(one -> held.put(one.id(), one));
        }
        for (PieceSpec spec : scene.brief().listed().pieces()) {
            Piece piece = scene.layout().contents().kinds().get(spec.kind());
            if (piece != null) {
                rows.add(row(scene, codes, spec, piece, held.get(spec.id())));
            }
        }
        return new Table("Pieces", HEADS, rows);
    }

    private static List<@Nullable Object> row(
            Scene scene, Codes codes, PieceSpec spec, Piece piece, @Nullable Held held) {
        List<@Nullable Object> row = new ArrayList<>();
        Loose loose = piece.loose();
        RackMount rack = piece.rack();
        DangerousGoods goods = loose == null ? null : loose.goods();
        Urgency asked = spec.urgency();
        row.add(codes.piece(spec.id()));
        row.add(spec.id());
        row.add(spec.name());
        row.add(piece.name());
        row.add(Lengths.millimetres(piece.size().x()));
        row.add(Lengths.millimetres(piece.size().y()));
        row.add(Lengths.millimetres(piece.size().z()));
        row.add(piece.mass().massKg());
        row.add(rack == null ? null : rack.units());
        row.add(1);
        row.add(loose != null && loose.fragile() ? "yes" : null);
        row.add(loose != null && loose.upright() ? "yes" : null);
        row.add(goods == null ? null : goods.hazardClass());
        row.add(held == null ? null : held.place().unit());
        row.add(held == null ? null : held.place().place());
        row.add(held == null ? null : codes.where(held));
        row.add(spec.task() == null
                ? null
                : scene.brief().listed().task(spec.task()).map(Task::name).orElse(spec.task()));
        row.add(spec.order());
        row.add(loose == null ? null : StowagePages.words(asked == null ? loose.urgency() : asked));
        row.add(spec.owner());
        return row;
    }
}
