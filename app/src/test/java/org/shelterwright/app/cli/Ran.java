package org.shelterwright.app.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.shelterwright.app.Shelterwright;
import org.shelterwright.app.about.ProgramVersion;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.terminal.Traits;
import org.shelterwright.app.cli.workshop.Interrupts;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.load.StandardLoader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a command line gave. */
public record Ran(int status, String out, String err) {

    /** Runs the program as it is put together for people, with its streams captured. */
    public static Ran of(Object... arguments) {
        return captured(Traits.PIPED, terminal -> Shelterwright.program(terminal, Interrupts.NONE), arguments);
    }

    /** Runs it with another fitter, and without documents. */
    static Ran with(Fitter fitter, Interrupts interrupts, Traits traits, Object... arguments) {
        Workshop workshop = new Workshop(
                ProgramVersion.ofThisBuild(),
                BuiltInCatalog::entries,
                Checker::standard,
                checker -> fitter,
                new StandardLoader(),
                (scene, ledger, particulars, folder) -> List.of(),
                interrupts,
                (opened, name) -> {});
        return captured(traits, terminal -> new Program(workshop, terminal), arguments);
    }

    static Ran with(Fitter fitter, Object... arguments) {
        return with(fitter, Interrupts.NONE, Traits.PIPED, arguments);
    }

    private static Ran captured(
            Traits traits, java.util.function.Function<Terminal, Program> program, Object... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String[] typed = Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
        int status = program.apply(new Terminal(out, err, traits)).run(typed).number();
        return new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    List<String> outLines() {
        return out.lines().toList();
    }

    JsonNode json() {
        return JsonMapper.shared().readTree(out);
    }
}
