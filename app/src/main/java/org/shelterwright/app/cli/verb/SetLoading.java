package org.shelterwright.app.cli.verb;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.LoadJson;
import org.shelterwright.app.cli.json.ResultHead;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.Interrupts.Watch;
import org.shelterwright.app.cli.workshop.Storage;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.LoadProgress;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.LoadResult;
import org.shelterwright.solver.load.set.LoadCsv;
import org.shelterwright.solver.load.set.LoadSet;
import org.shelterwright.solver.load.set.LoadSet.SetProblem;

/** Loads one problem of a published set and writes its rows. */
final class SetLoading {
    private final SetOptions options;
    private final long seed;
    private final @Nullable String named;
    private final Workshop workshop;
    private final Terminal terminal;

    SetLoading(SetOptions options, long seed, @Nullable String named, Workshop workshop, Terminal terminal) {
        this.options = options;
        this.seed = seed;
        this.named = named;
        this.workshop = workshop;
        this.terminal = terminal;
    }

    /** Runs it; with a head, the result is printed as JSON. */
    ExitStatus run(@Nullable ResultHead head) {
        SetProblem problem =
                LoadSet.read(InputFile.read(Inputs.path(options.file()))).problem(options.problem(), options.file());
        LoadRequest request = options.request(problem.with(options.support()), seed);
        Path out = named == null ? null : Inputs.path(named);
        if (out != null) {
            tryOut(out);
        }
        StopSignal stop = new StopSignal();
        LoadResult result;
        try (Watch watch = workshop.interrupts().watch(() -> stop(stop))) {
            result = workshop.loader().load(request, this::show, stop);
        }
        terminal.wipe();
        if (!result.faults().isEmpty()) {
            throw new IllegalStateException(
                    "The load that was found does not hold: " + result.faults().get(0));
        }
        String rows = LoadCsv.of(problem.number(), problem.kinds(), result.load());
        if (out != null) {
            put(out, rows);
        }
        if (head != null) {
            terminal.result(LoadJson.of(head, problem, request, result, named));
        } else if (out == null) {
            terminal.result(rows.stripTrailing());
        } else {
            lines(problem, result, out).forEach(terminal::result);
        }
        return ExitStatus.HELD;
    }

    private static List<String> lines(SetProblem problem, LoadResult result, Path out) {
        return List.of(
                String.format(
                        Locale.ROOT,
                        "Problem %d: %d of %d pieces, %.3f %% of the volume, %.1f s. Checked from scratch: every piece holds.",
                        problem.number(),
                        result.load().stowed().size(),
                        problem.pieces(),
                        100 * result.share(),
                        result.elapsed().toMillis() / 1e3),
                "1 file written: " + out);
    }

    private void stop(StopSignal stop) {
        terminal.message("Stopping: the best so far is kept and written.");
        stop.stop();
    }

    private void show(LoadProgress progress) {
        terminal.progress(String.format(
                Locale.ROOT,
                "Loading %.1f s; best: %.2f %% of the volume",
                progress.elapsed().toMillis() / 1e3,
                100 * progress.share()));
    }

    /** Tries before the search whether a file can be written, so that no time is lost on a place that refuses. */
    private static void tryOut(Path file) {
        if (Files.isDirectory(file)) {
            throw new InputException(file.toString(), "This is a folder, but a file is needed. Name a file in it.");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new InputException(file.toString(), "There is no folder " + folder + ". Make it, or name another.");
        }
        try {
            Files.delete(Files.createTempFile(folder, ".try", null));
        } catch (IOException e) {
            throw Storage.refused(file, e);
        }
    }

    /** Writes a file whole or not at all. */
    private static void put(Path file, String text) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            Path aside = Files.createTempFile(folder, ".load", null);
            try {
                Files.writeString(aside, text, StandardCharsets.UTF_8);
                Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(aside);
            }
        } catch (IOException e) {
            throw Storage.refused(file, e);
        }
    }
}
