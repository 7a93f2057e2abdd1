package org.shelterwright.app.desk.ledger;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.shelterwright.app.desk.command.Command;
import org.shelterwright.app.desk.command.Commands;
import org.shelterwright.layouts.ledger.Verdict;

/** What can be done with the ledger. */
final class LedgerCommands {
    private final LedgerPart part;
    private final FindingSteps steps;
    private final Acceptances acceptances;

    LedgerCommands(LedgerPart part, FindingSteps steps, Acceptances acceptances) {
        this.part = part;
        this.steps = steps;
        this.acceptances = acceptances;
    }

    void addTo(Commands commands) {
        commands.add(command("next-finding", "Next finding", "F8", steps::obstacle, () -> steps.step(1)));
        commands.add(
                command("previous-finding", "Previous finding", "Shift+F8", steps::obstacle, () -> steps.step(-1)));
        commands.add(command("worst-finding", "Worst finding", "Ctrl+F8", steps::obstacle, steps::worst));
        commands.add(command(
                "show-place",
                "Show the place of the finding",
                "",
                () -> steps.current().isPresent() ? Optional.empty() : Optional.of("Choose a row of the ledger first."),
                () -> steps.current().ifPresent(steps::show)));
        commands.add(command(
                "accept",
                "Accept the finding with a reason",
                "",
                () -> acceptances.obstacle(part.looked()),
                () -> acceptances.accept(part.looked())));
        commands.add(command(
                "withdraw",
                "Accept the finding no more",
                "",
                () -> acceptances.withdrawalObstacle(part.looked()),
                () -> acceptances.withdraw(part.looked())));
        for (Verdict verdict : Verdict.values()) {
            commands.add(command(
                    "only-" + verdict.word().replace(' ', '-'),
                    "Show only what is " + verdict.word(),
                    "",
                    Optional::empty,
                    () -> part.show(part.shown().every().toggled(verdict))));
        }
        commands.add(command(
                "every",
                "Show every verdict",
                "",
                Optional::empty,
                () -> part.show(part.shown().every())));
        commands.add(command(
                "by-subject",
                "Order the ledger by subject or tightest first",
                "",
                Optional::empty,
                () -> part.show(part.shown().bySubject(!part.shown().bySubject()))));
        commands.add(command("go", "Go to the ledger", "Ctrl+L", Optional::empty, part::takeFocus));
    }

    private static Command command(
            String id, String name, String keys, Supplier<Optional<String>> obstacle, Runnable action) {
        return new Command(
                "ledger." + id,
                name,
                List.of("ledger", "limit"),
                keys.isEmpty() ? List.of() : List.of(keys),
                obstacle,
                action);
    }
}
