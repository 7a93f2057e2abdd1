package org.shelterwright.app.desk.ledger;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** What can be done with a ledger column. */
public final class LedgerCommands {
    private final LedgerColumn column;
    private final Judged judged;
    private final Acceptances acceptances;
    private final Naming naming;

    LedgerCommands(LedgerColumn column, Judged judged, Acceptances acceptances, Naming naming) {
        this.column = column;
        this.judged = judged;
        this.acceptances = acceptances;
        this.naming = naming;
    }

    /** The ids of all its commands, without what they begin with. */
    public static List<String> ids() {
        return Stream.concat(
                        Stream.of(
                                "next-finding",
                                "previous-finding",
                                "worst-finding",
                                "show-place",
                                "accept",
                                "withdraw",
                                "every",
                                "by-subject",
                                "go"),
                        Stream.of(Verdict.values()).map(LedgerCommands::only))
                .toList();
    }

    private static String only(Verdict verdict) {
        return "only-" + verdict.word().replace(' ', '-');
    }

    void addTo(Commands commands) {
        String finding = naming.finding();
        commands.add(command("next-finding", "Next " + finding, "F8", judged::obstacle, () -> judged.step(1)));
        commands.add(command(
                "previous-finding", "Previous " + finding, "Shift+F8", judged::obstacle, () -> judged.step(-1)));
        commands.add(command("worst-finding", "Worst " + finding, "Ctrl+F8", judged::obstacle, judged::worst));
        commands.add(command(
                "show-place",
                "Show the place of the " + finding,
                "",
                () -> current().isPresent() ? Optional.empty() : Optional.of("Choose a row of the ledger first."),
                () -> current().ifPresent(judged::show)));
        commands.add(command(
                "accept",
                "Accept the " + finding + " with a reason",
                "",
                () -> acceptances.obstacle(column.looked()),
                () -> acceptances.accept(column.looked())));
        commands.add(command(
                "withdraw",
                "Accept the " + finding + " no more",
                "",
                () -> acceptances.withdrawalObstacle(column.looked()),
                () -> acceptances.withdraw(column.looked())));
        String in = naming.of().isEmpty() ? "" : " in the " + naming.ledger();
        for (Verdict verdict : Verdict.values()) {
            commands.add(command(
                    only(verdict),
                    "Show only what is " + verdict.word() + in,
                    "",
                    Optional::empty,
                    () -> column.show(column.shown().every().toggled(verdict))));
        }
        commands.add(command(
                "every",
                "Show every verdict" + in,
                "",
                Optional::empty,
                () -> column.show(column.shown().every())));
        commands.add(command(
                "by-subject",
                "Order the " + naming.ledger() + " by subject or tightest first",
                "",
                Optional::empty,
                () -> column.show(column.shown().bySubject(!column.shown().bySubject()))));
        commands.add(command("go", "Go to the " + naming.ledger(), "Ctrl+L", Optional::empty, column::takeFocus));
    }

    /** The finding that is looked at, if the ledger still has it. */
    private Optional<Row> current() {
        return judged.finding().flatMap(finding -> finding.in(judged.ledger()));
    }

    private Command command(String id, String name, String key, Supplier<Optional<String>> obstacle, Runnable action) {
        return new Command(naming.prefix() + id, name, List.of("ledger", "limit"), naming.keys(key), obstacle, action);
    }
}
