package org.shelterwright.app.desk.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.TestLayout;
import org.shelterwright.app.desk.ScriptedQuestions;
import org.shelterwright.app.desk.ask.Person;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.TakeOutUnit;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.samples.Samples;

class LedgerLinesTest {
    private static final Checker CHECKER = Checker.standard();
    private static final Layout LAYOUT = TestLayout.riverPost();
    private static final Ledger LEDGER = CHECKER.check(LAYOUT);

    private Session session;
    private FindingSteps steps;

    @BeforeEach
    void open() {
        session = new Session(CHECKER, LAYOUT);
        steps = new FindingSteps(session);
    }

    @Test
    void rowsAreNumberedInTheOrderOfTheLedger() {
        List<Line.Entry> entries = entries(lines(Shown.USUAL));

        assertThat(entries.get(0).row()).isSameAs(LEDGER.rows().get(0));
        assertThat(entries.get(0).mark()).startsWith("F1");
        assertThat(entries)
                .filteredOn(entry -> entry.row().verdict() == Verdict.MET)
                .isNotEmpty()
                .allSatisfy(entry -> assertThat(entry.mark()).isEmpty());
    }

    @Test
    void ofMetRowsTheTightestOfEachLimitIsShownAndTheRestIsCounted() {
        List<Line> lines = lines(Shown.USUAL);

        List<Line.Entry> met = entries(lines).stream()
                .filter(entry -> entry.row().verdict() == Verdict.MET)
                .toList();
        assertThat(met).extracting(entry -> entry.row().limit()).doesNotHaveDuplicates();
        assertThat(lines.get(lines.size() - 1)).isEqualTo(new Line.More((int) LEDGER.count(Verdict.MET) - met.size()));
        assertThat(lines(Shown.USUAL.withAllMet())).noneMatch(Line.More.class::isInstance);
    }

    @Test
    void noRowThatIsNotMetIsEverLeftOut() {
        long shown = entries(lines(Shown.USUAL)).stream()
                .filter(entry -> entry.row().verdict() != Verdict.MET)
                .mapToLong(entry -> entry.group().rows().size())
                .sum();

        assertThat(shown).isEqualTo(LEDGER.rows().size() - LEDGER.count(Verdict.MET));
    }

    @Test
    void oneVerdictCanBeShownAloneAndThenAllAgain() {
        Shown only = Shown.USUAL.toggled(Verdict.NOT_ASSESSED);

        assertThat(entries(lines(only)))
                .isNotEmpty()
                .allMatch(entry -> entry.row().verdict() == Verdict.NOT_ASSESSED);
        assertThat(only.toggled(Verdict.NOT_ASSESSED)).isEqualTo(Shown.USUAL);
        assertThat(only.toggled(Verdict.BROKEN).only()).contains(Verdict.BROKEN);
    }

    @Test
    void bySubjectEachSubjectHasItsHeadingWithCounts() {
        List<Line> lines = lines(Shown.USUAL.withAllMet().bySubject(true));

        assertThat(lines.get(0)).isInstanceOf(Line.Heading.class);
        assertThat(lines)
                .filteredOn(Line.Heading.class::isInstance)
                .hasSize(LEDGER.bySubject().size());
        assertThat(entries(lines)).hasSameSizeAs(entries(lines(Shown.USUAL.withAllMet())));
    }

    @Test
    void whatMovedSinceTheLastSaveSaysWhatItWas() {
        Layout sample =
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();
        Ledger before = CHECKER.check(sample);
        Ledger after = CHECKER.check(new TakeOutUnit("rack-1").apply(sample));

        List<String> words =
                entries(new LedgerLines(before).lines(after, row -> false, Shown.USUAL.withAllMet())).stream()
                        .map(Line.Entry::before)
                        .toList();

        assertThat(words)
                .anyMatch(word -> word.matches("was \\d\\.\\d\\d"))
                .anyMatch("was met"::equals)
                .anyMatch(String::isEmpty);
        assertThat(entries(lines(Shown.USUAL.withAllMet())))
                .allMatch(entry -> entry.before().isEmpty());
    }

    @Test
    void stepsGoRoundTheFindingsAndSelectTheirUnits() {
        steps.worst();
        Finding worst = session.selection().finding().get();
        assertThat(worst).isEqualTo(Finding.of(LEDGER.rows().get(0)));
        if (!worst.units().isEmpty()) {
            assertThat(session.selection().units().get()).containsAll(worst.units());
        }

        long findings = LEDGER.rows().size() - LEDGER.count(Verdict.MET);
        for (long i = 1; i < findings; i++) {
            steps.step(1);
            assertThat(session.selection().finding().get()).isNotEqualTo(worst);
        }
        steps.step(1);
        assertThat(session.selection().finding().get()).isEqualTo(worst);
        steps.step(-1);
        assertThat(session.selection().finding().get()).isNotEqualTo(worst);
    }

    @Test
    void acceptanceCarriesNameDateAndReasonAndCanBeTakenBack() {
        Row row = first(Verdict.NOT_ASSESSED);
        ScriptedQuestions questions = new ScriptedQuestions().answering("M. Varn", "Maker asked, answer due in May.");
        Remembered person = new Remembered();
        Acceptances acceptances = acceptances(questions, person);

        acceptances.accept(List.of(row));

        assertThat(judged().accepted(row))
                .contains(new Acceptance(
                        row.limit(), row.units(), "Maker asked, answer due in May.", "M. Varn", "2026-03-01"));
        assertThat(person.name()).contains("M. Varn");
        assertThat(questions.asked().get(1))
                .contains(row.finding())
                .contains("The ledger will go on showing it as not assessed");
        assertThat(session.now().history().undoNames()).containsExactly("Accept " + row.title());
        assertThat(first(Verdict.NOT_ASSESSED)).as("it is still shown as it is").isNotNull();

        acceptances.withdraw(List.of(row));
        assertThat(judged().accepted(row)).isEmpty();
    }

    @Test
    void whatCannotBeAcceptedSaysWhy() {
        Acceptances acceptances = acceptances(new ScriptedQuestions(), new Remembered());

        assertThat(acceptances.obstacle(List.of())).contains("Choose a row of the ledger first.");
        assertThat(acceptances.obstacle(List.of(first(Verdict.MET))))
                .contains("Only what is broken or not assessed needs to be accepted.");
        assertThat(acceptances.obstacle(List.of(first(Verdict.NOT_ASSESSED)))).isEmpty();
        assertThat(acceptances.withdrawalObstacle(List.of(first(Verdict.NOT_ASSESSED))))
                .contains("Nobody has accepted this row.");
    }

    @Test
    void withoutAReasonNothingIsAccepted() {
        Row row = first(Verdict.NOT_ASSESSED);
        Acceptances acceptances = acceptances(new ScriptedQuestions().answering("M. Varn"), new Remembered());

        acceptances.accept(List.of(row));

        assertThat(judged().accepted(row)).isEmpty();
        assertThat(session.now().history().canUndo()).isFalse();
    }

    @Test
    void aRowIsSpokenWithVerdictFirst() {
        Line.Entry entry = entries(lines(Shown.USUAL)).get(0);

        assertThat(entry.spoken())
                .startsWith(entry.mark() + ", " + entry.row().verdict().word() + ": ")
                .endsWith(entry.row().finding());
    }

    private Acceptances acceptances(ScriptedQuestions questions, Person person) {
        return new Acceptances(
                judged(), questions, person, Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC));
    }

    private Judged judged() {
        return new JudgedLayout(session, new SimpleObjectProperty<>(LEDGER));
    }

    private static List<Line> lines(Shown shown) {
        return new LedgerLines(LEDGER)
                .lines(
                        LEDGER,
                        row -> LAYOUT.acceptance(row.limit(), row.units()).isPresent(),
                        shown);
    }

    private static List<Line.Entry> entries(List<Line> lines) {
        return lines.stream().flatMap(line -> Line.entry(line).stream()).toList();
    }

    private static Row first(Verdict verdict) {
        return Stream.of(LEDGER)
                .flatMap(ledger -> ledger.rows().stream())
                .filter(row -> row.verdict() == verdict)
                .findFirst()
                .orElseThrow();
    }

    private static final class Remembered implements Person {
        private Optional<String> name = Optional.empty();

        @Override
        public Optional<String> name() {
            return name;
        }

        @Override
        public void call(String given) {
            name = Optional.of(given);
        }
    }
}
