package org.shelterwright.app.cli.verb;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.about.DataVersion;
import org.shelterwright.app.cli.json.ResultHead;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.layouts.ledger.Ledger;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** One verb. An instance serves one command line. */
public abstract class Verb implements Callable<Integer> {
    private final Workshop workshop;
    private final Terminal terminal;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Spec
    private @Nullable CommandSpec spec;

    private @Nullable CatalogEntries entries;

    Verb(Workshop workshop, Terminal terminal) {
        this.workshop = workshop;
        this.terminal = terminal;
    }

    /** Does the work. */
    abstract ExitStatus run();

    /** Where a fault is looked for that does not tell its own place, such as the file that was named. */
    public abstract String place();

    @Override
    public final Integer call() {
        return run().number();
    }

    /** Whether a failure is to be shown in full. */
    public final boolean traced() {
        return common.trace();
    }

    final Workshop workshop() {
        return workshop;
    }

    final Terminal terminal() {
        return terminal;
    }

    final boolean json() {
        return common.json();
    }

    /** The built-in catalog, read at most once. */
    final CatalogEntries entries() {
        CatalogEntries read = entries;
        if (read == null) {
            read = workshop.entries().get();
            entries = read;
        }
        return read;
    }

    final ResultHead head() {
        String name = spec == null ? "" : spec.qualifiedName(" ");
        return new ResultHead(name.substring(name.indexOf(' ') + 1), workshop.version(), DataVersion.of(entries()));
    }

    final void print(List<String> lines) {
        lines.forEach(terminal::result);
    }

    final void warn(List<Problem> doubts) {
        doubts.forEach(doubt -> terminal.message(doubt.text()));
    }

    static ExitStatus status(Ledger ledger) {
        return ledger.allMet() ? ExitStatus.HELD : ExitStatus.OPEN;
    }
}
