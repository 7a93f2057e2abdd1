package org.shelterwright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.shelterwright.app.about.ProgramVersion;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Storage;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.Problem;

/** Says what went wrong: wrong input in one sentence each, and our own faults with where their details were put. */
final class Faults {
    private static final int MOST_PROBLEMS = 50;
    private static final String OWN = "org.shelterwright.";

    private final ProgramVersion version;
    private final Terminal terminal;

    Faults(ProgramVersion version, Terminal terminal) {
        this.version = version;
        this.terminal = terminal;
    }

    /**
     * Reports what was thrown.
     *
     * @param place where a fault is looked for that does not tell its own place
     * @param arguments what was typed, for the log
     * @param traced whether the details go to the messages and not to a file
     */
    ExitStatus report(Throwable thrown, String place, List<String> arguments, boolean traced) {
        terminal.wipe();
        if (thrown instanceof InputException input) {
            problems(input.problems());
            return ExitStatus.BAD_INPUT;
        }
        if (refusal(thrown)) {
            terminal.message(place + ": " + thrown.getMessage());
            return ExitStatus.BAD_INPUT;
        }
        if (thrown instanceof UncheckedIOException storage) {
            terminal.message(place + ": " + Storage.sentence(storage));
            return ExitStatus.BAD_INPUT;
        }
        if (thrown instanceof OutOfMemoryError) {
            terminal.message("The program ran out of memory. Give it more, for example with the environment variable"
                    + " SHELTERWRIGHT_JAVA_OPTIONS=-Xmx4g.");
            return ExitStatus.FAILED;
        }
        failure(thrown, arguments, traced);
        return ExitStatus.FAILED;
    }

    private void problems(List<Problem> problems) {
        problems.stream().limit(MOST_PROBLEMS).forEach(problem -> terminal.message(problem.text()));
        if (problems.size() > MOST_PROBLEMS) {
            terminal.message("... and " + (problems.size() - MOST_PROBLEMS) + " more problems.");
        }
    }

    /** Our own code refuses values with this exception; where a library throws it, we have passed it something wrong. */
    private static boolean refusal(Throwable thrown) {
        StackTraceElement[] trace = thrown.getStackTrace();
        return thrown.getClass() == IllegalArgumentException.class
                && trace.length > 0
                && trace[0].getClassName().startsWith(OWN);
    }

    private void failure(Throwable thrown, List<String> arguments, boolean traced) {
        String details = details(thrown, arguments);
        if (traced) {
            terminal.message("The program failed, which is its own fault and not yours:");
            terminal.message(details);
            return;
        }
        try {
            Path log = Files.createTempFile("shelterwright-", ".log");
            Files.writeString(log, details);
            terminal.message("The program failed, which is its own fault and not yours. Details are in " + log
                    + "; please report them.");
        } catch (IOException e) {
            terminal.message("The program failed, which is its own fault and not yours (" + thrown
                    + "). Run it again with --trace for details; please report them.");
        }
    }

    private String details(Throwable thrown, List<String> arguments) {
        StringWriter text = new StringWriter();
        PrintWriter writer = new PrintWriter(text);
        writer.println(version.line());
        writer.println("Java " + System.getProperty("java.version") + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.version"));
        writer.println("Arguments: " + arguments);
        thrown.printStackTrace(writer);
        return text.toString();
    }
}
