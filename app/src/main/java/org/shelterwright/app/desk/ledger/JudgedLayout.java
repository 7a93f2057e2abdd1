package org.shelterwright.app.desk.ledger;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.layouts.edit.AcceptRow;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.WithdrawAcceptance;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.rules.Figure;

/** The rows of the layout on the desk; the finding that is looked at is shared with the view. Needs no window. */
public final class JudgedLayout implements Judged {
    private final Session session;
    private final ObservableValue<Ledger> saved;
    private final FindingSteps steps;

    /** @param saved the ledger of the layout as it was last saved */
    public JudgedLayout(Session session, ObservableValue<Ledger> saved) {
        this.session = session;
        this.saved = saved;
        steps = new FindingSteps(session);
    }

    @Override
    public String title() {
        return "Ledger";
    }

    @Override
    public Ledger ledger() {
        return session.now().ledger();
    }

    @Override
    public Ledger saved() {
        return saved.getValue();
    }

    @Override
    public double closeShare() {
        return session.now().scene().rules().valueOr(Figure.CLOSE_SHARE, 0.9);
    }

    @Override
    public Optional<Finding> finding() {
        return Optional.ofNullable(session.selection().finding().get());
    }

    @Override
    public void look(Finding finding) {
        session.selection().finding().set(finding);
    }

    @Override
    public void show(Row row) {
        steps.show(row);
    }

    @Override
    public Optional<String> obstacle() {
        return steps.obstacle();
    }

    @Override
    public void worst() {
        steps.worst();
    }

    @Override
    public void step(int by) {
        steps.step(by);
    }

    @Override
    public Optional<Acceptance> accepted(Row row) {
        return session.now().layout().acceptance(row.limit(), row.units());
    }

    @Override
    public void accept(String name, List<Acceptance> given) {
        apply(name, given.stream().map(AcceptRow::new));
    }

    @Override
    public void withdraw(String name, List<Row> rows) {
        apply(name, rows.stream().map(row -> new WithdrawAcceptance(row.limit(), row.units())));
    }

    private void apply(String name, Stream<? extends Edit> edits) {
        Layout layout = session.now().history().current();
        for (Edit edit : edits.toList()) {
            layout = edit.apply(layout);
        }
        session.apply(name, layout);
    }

    @Override
    public void onRows(Runnable action) {
        session.standing().addListener((observable, before, now) -> action.run());
        saved.addListener((observable, before, now) -> action.run());
    }

    @Override
    public void onLook(Runnable action) {
        session.selection().finding().addListener((observable, before, now) -> action.run());
    }
}
