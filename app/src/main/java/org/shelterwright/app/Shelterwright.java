package org.shelterwright.app;

import org.shelterwright.app.cli.Terminal;

/** Starts the program. */
public final class Shelterwright {

    private Shelterwright() {}

    /**
     * Runs the command line and ends the process with its exit status.
     *
     * @param arguments what was typed after the name of the program
     */
    public static void main(String[] arguments) {
        System.exit(Terminal.run(arguments));
    }
}
