package org.shelterwright.app.desk.ledger;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.ask.Questions;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** Accepts findings with a name, a date and a reason, and takes that back. Needs no window. */
final class Acceptances {
    private final Judged judged;
    private final Questions questions;
    private final Person person;
    private final Clock clock;

    Acceptances(Judged judged, Questions questions, Person person, Clock clock) {
        this.judged = judged;
        this.questions = questions;
        this.person = person;
        this.clock = clock;
    }

    Optional<String> obstacle(List<Row> rows) {
        if (rows.isEmpty()) {
            return Optional.of("Choose a row of the ledger first.");
        }
        Verdict verdict = rows.get(0).verdict();
        return verdict == Verdict.BROKEN || verdict == Verdict.NOT_ASSESSED
                ? Optional.empty()
                : Optional.of("Only what is broken or not assessed needs to be accepted.");
    }

    Optional<String> withdrawalObstacle(List<Row> rows) {
        return rows.stream().anyMatch(row -> judged.accepted(row).isPresent())
                ? Optional.empty()
                : Optional.of("Nobody has accepted this row.");
    }

    /** Asks for name and reason, then accepts the rows as one change. */
    void accept(List<Row> rows) {
        Optional<String> by = person.name().or(this::name);
        if (by.isEmpty()) {
            return;
        }
        Optional<String> reason = questions.text(
                "Accept " + rows.get(0).title(),
                rows.get(0).finding() + " The ledger will go on showing it as "
                        + rows.get(0).verdict().word() + ", with your name, the date and the reason beside it.",
                "Reason, as " + by.get() + " gives it",
                "",
                "Accept",
                typed -> typed.isBlank() ? Optional.of("A reason is needed.") : Optional.empty());
        reason.ifPresent(words -> judged.accept(
                "Accept " + rows.get(0).title(),
                rows.stream()
                        .map(row -> new Acceptance(
                                row.limit(),
                                row.units(),
                                words,
                                by.get(),
                                LocalDate.now(clock).toString()))
                        .toList()));
    }

    void withdraw(List<Row> rows) {
        judged.withdraw("Accept " + rows.get(0).title() + " no more", rows);
    }

    private Optional<String> name() {
        Optional<String> name = questions.text(
                "Your name",
                "An acceptance carries the name of who gave it. It is kept for the next time.",
                "Name",
                "",
                "Go on",
                typed -> typed.isBlank() ? Optional.of("A name is needed.") : Optional.empty());
        name.ifPresent(person::call);
        return name;
    }
}
