package org.shelterwright.app.cli.verb;

import picocli.CommandLine.Option;

/** Options of every verb. */
final class CommonOptions {
    @Option(names = "--json", description = "Print the result as JSON, for other programs.")
    private boolean json;

    @Option(names = "--trace", description = "If the program fails, print all that is known of it.")
    private boolean trace;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    private boolean help;

    boolean json() {
        return json;
    }

    boolean trace() {
        return trace;
    }

    boolean help() {
        return help;
    }
}
