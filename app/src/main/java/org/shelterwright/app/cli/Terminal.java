package org.shelterwright.app.cli;

import org.shelterwright.app.about.ProgramVersion;

/** Answers a command line. */
public final class Terminal {

    private Terminal() {}

    /**
     * Prints the version line.
     *
     * @param arguments what was typed after the name of the program; none is understood yet
     * @return the exit status
     */
    public static int run(String... arguments) {
        System.out.println(ProgramVersion.ofThisBuild().line());
        return 0;
    }
}
