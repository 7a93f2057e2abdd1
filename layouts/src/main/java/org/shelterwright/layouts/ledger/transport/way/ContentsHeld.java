package org.shelterwright.layouts.ledger.transport.way;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.restraint.RestraintLimits;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Shape;

/**
 * What is inside a travelling body is held under the load cases of every leg, so that the strongest leg governs. The limits are those of
 * the subject restraint. Source: MIL-STD-1366: the contents of a shipped vehicle are the secondary load and must meet the restraint of
 * every planned mode (seen).
 */
final class ContentsHeld extends LegLimit {
    private final List<Limit> limits;

    ContentsHeld(Fasteners fasteners) {
        super(
                "contents-held",
                "Contents held",
                Source.seen("MIL-STD-1366", "secondary load: contents meet the restraint of every planned mode"),
                "No body travels on this leg, or its rules set no load case.");
        limits = RestraintLimits.all(fasteners);
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        if (leg.rules().loadCases().isEmpty()) {
            return;
        }
        for (LegScene.Driven driven : leg.drives()) {
            assess(leg, driven.vehicle(), QuarterTurn.R0, null, rows);
        }
        for (PlacedLoad load : leg.loads()) {
            for (PlacedPiece piece : load.pieces()) {
                assess(leg, piece.shape(), piece.pose().yaw(), load, rows);
            }
        }
    }

    private void assess(LegScene leg, Shape shape, QuarterTurn yaw, @Nullable PlacedLoad load, Rows rows) {
        Layout layout = shape.layout();
        Piece.Part part =
                leg.journey().journey().piece(shape.id()).map(Piece::part).orElse(null);
        if (layout == null || part == Piece.Part.TRAILER) {
            return;
        }
        rows.add(LayoutRows.told(
                draft(leg, rows, "Contents of " + shape.name())
                        .units(load == null ? List.of(shape.id()) : List.of(shape.id(), load.id())),
                LayoutRows.of(leg, layout, limits, yaw),
                shape.name()));
    }
}
