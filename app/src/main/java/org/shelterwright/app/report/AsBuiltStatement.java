package org.shelterwright.app.report;

import org.shelterwright.app.tables.Csv;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassStatement;

/** The mass statement of what was built, as a table alone. */
public final class AsBuiltStatement {
    private AsBuiltStatement() {}

    /** CSV, one line a mass, with the units where they were measured. */
    public static byte[] csv(Scene built) {
        return Csv.write(MassTables.lines(MassStatement.of(built)));
    }
}
