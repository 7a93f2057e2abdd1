package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.ledger.Judged;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Journey;
import org.shelterwright.layouts.transport.edit.AcceptLegRow;
import org.shelterwright.layouts.transport.edit.JourneyEdit;
import org.shelterwright.layouts.transport.edit.WithdrawLegAcceptance;
import org.shelterwright.layouts.transport.scene.JourneyScene;

/** The rows of the leg that is looked at. Going from finding to finding leads through all legs. Needs no window. */
final class JourneyJudged implements Judged {
    private static final Ledger NOTHING = new Ledger(List.of());

    private final JourneySession session;
    private final Supplier<@Nullable Ledger> saved;

    /** @param saved the rows of the leg as they were last saved; {@code null} if they never were */
    JourneyJudged(JourneySession session, Supplier<@Nullable Ledger> saved) {
        this.session = session;
        this.saved = saved;
    }

    @Override
    public String title() {
        return session.leg().map(leg -> "Ledger of leg " + leg.number()).orElse("Ledger");
    }

    @Override
    public Ledger ledger() {
        return session.legLedger().orElse(NOTHING);
    }

    @Override
    public Ledger saved() {
        Ledger before = saved.get();
        return before == null ? ledger() : before;
    }

    @Override
    public double closeShare() {
        return closeShare(session);
    }

    static double closeShare(JourneySession session) {
        return session.leg()
                .map(leg -> leg.rules().valueOr(Figure.CLOSE_SHARE, 0.9))
                .orElse(0.9);
    }

    @Override
    public Optional<Finding> finding() {
        return Optional.ofNullable(session.focus().get()).map(Focus::finding);
    }

    @Override
    public void look(Finding finding) {
        session.look(focus -> focus.onFinding(finding));
    }

    /** Shows the load that a row concerns, and selects the pieces that it names if they are few. */
    @Override
    public void show(Row row) {
        session.now().ifPresent(now -> session.look(focus -> focused(focus, row, now.scene())));
    }

    private static Focus focused(Focus focus, Row row, JourneyScene scene) {
        Focus on = row.units().stream()
                .filter(id -> scene.load(id).isPresent())
                .reduce((a, b) -> b)
                .map(load -> focus.onLoad(load, scene))
                .orElse(focus);
        Set<String> pieces = row.units().stream()
                .filter(id -> scene.shape(id).isPresent())
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
        return on.onPieces(pieces.size() > 2 ? Set.of() : pieces).onFinding(Finding.of(row));
    }

    @Override
    public Optional<String> obstacle() {
        boolean any = session.now().stream()
                .flatMap(now -> now.ledger().legs().stream())
                .anyMatch(leg -> !open(leg.ledger()).isEmpty());
        return any
                ? Optional.empty()
                : Optional.of(
                        session.now().isPresent()
                                ? "Every limit of the journey is met with room to spare."
                                : "No journey is open.");
    }

    @Override
    public void worst() {
        session.now()
                .map(JourneyStanding::ledger)
                .ifPresent(ledger -> open(ledger.all()).stream()
                        .findFirst()
                        .ifPresent(row -> ledger.legs().stream()
                                .filter(leg -> leg.ledger().rows().contains(row))
                                .findFirst()
                                .ifPresent(leg -> lookAt(leg.number(), row))));
    }

    @Override
    public void step(int by) {
        session.now().ifPresent(now -> {
            Focus focus = session.focus().get();
            List<Row> here = open(ledger());
            Finding looked = focus == null ? null : focus.finding();
            int at = looked == null
                    ? -1
                    : here.stream().map(Finding::of).toList().indexOf(looked);
            int next = at < 0 ? (by > 0 ? 0 : here.size() - 1) : at + by;
            int legs = now.ledger().legs().size();
            int leg = focus == null ? 1 : focus.leg();
            for (int tried = 0; tried <= legs && (next < 0 || next >= here.size()); tried++) {
                leg = Math.floorMod(leg - 1 + Integer.signum(by), legs) + 1;
                here = open(now.ledger().legs().get(leg - 1).ledger());
                next = by > 0 ? 0 : here.size() - 1;
            }
            if (next >= 0 && next < here.size()) {
                lookAt(leg, here.get(next));
            }
        });
    }

    private void lookAt(int leg, Row row) {
        session.now()
                .map(JourneyStanding::scene)
                .ifPresent(scene -> session.look(before -> focused(before.onLeg(leg, scene), row, scene)));
    }

    private static List<Row> open(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> row.verdict() != Verdict.MET)
                .toList();
    }

    @Override
    public Optional<Acceptance> accepted(Row row) {
        return session.leg().flatMap(leg -> leg.leg().acceptance(row.limit(), row.units()));
    }

    @Override
    public void accept(String name, List<Acceptance> given) {
        apply(name, leg -> given.stream().map(one -> new AcceptLegRow(leg, one)));
    }

    @Override
    public void withdraw(String name, List<Row> rows) {
        apply(name, leg -> rows.stream().map(row -> new WithdrawLegAcceptance(leg, row.limit(), row.units())));
    }

    private void apply(String name, Function<String, Stream<? extends JourneyEdit>> edits) {
        String leg = session.leg().orElseThrow().leg().id();
        Journey journey = session.now().orElseThrow().history().current().journey();
        for (JourneyEdit edit : edits.apply(leg).toList()) {
            journey = edit.apply(journey);
        }
        session.apply(name, journey);
    }

    /** Another leg has other rows. */
    @Override
    public void onRows(Runnable action) {
        session.standing().addListener((observable, before, now) -> action.run());
        session.focus().addListener((observable, before, now) -> action.run());
    }

    /** What is looked at is told with the rows. */
    @Override
    public void onLook(Runnable action) {}
}
