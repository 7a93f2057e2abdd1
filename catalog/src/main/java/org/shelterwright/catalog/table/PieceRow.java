package org.shelterwright.catalog.table;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.piece.Piece;

/**
 * One row of a list of pieces.
 *
 * @param kind the kind of piece that it describes
 * @param quantity how many there are
 * @param within id of the unit that it goes into; {@code null} if not said
 * @param task what it is used for, as the list calls it; {@code null} if not said
 * @param order order of use within the task; {@code null} if not said
 * @param owner who answers for it; {@code null} if not said
 */
public record PieceRow(
        Piece kind,
        int quantity,
        @Nullable String within,
        @Nullable String task,
        @Nullable Integer order,
        @Nullable String owner) {}
