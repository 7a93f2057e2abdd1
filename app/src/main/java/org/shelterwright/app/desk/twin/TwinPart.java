package org.shelterwright.app.desk.twin;

import javafx.scene.control.TableView;
import javafx.scene.layout.Region;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.app.desk.style.Theme;

/** The table of units, with the shared selection. */
public final class TwinPart {
    private final Session session;
    private final RowTable<TwinRow> table =
            new RowTable<>("Table of units", "The brief asks for no units.", TwinRow::sentence);

    public TwinPart(Session session, Theme theme) {
        this.session = session;
        table.node().setColumnResizePolicy(TableView.UNCONSTRAINED_RESIZE_POLICY);
        table.column("Unit", 150, false, TwinRow::name)
                .column("Item", 190, false, TwinRow::item)
                .column("Surface", 120, false, TwinRow::surface)
                .column("x, mm", 80, true, TwinRow::x)
                .column("y, mm", 80, true, TwinRow::y)
                .column("z, mm", 80, true, TwinRow::z)
                .column("Turn", 60, true, TwinRow::turn)
                .column("Mass, kg", 80, true, TwinRow::mass)
                .column("Findings", 180, false, TwinRow::findings)
                .growing(theme);
        table.share(
                TwinRow::unit,
                session.selection().units(),
                chosen -> session.selection().set(chosen));
        session.standing().addListener((observable, before, now) -> show());
        session.situation().addListener((observable, before, now) -> show());
        show();
    }

    public Region node() {
        return table.node();
    }

    private void show() {
        table.show(TwinRow.of(session.now(), session.situation().get()));
    }
}
