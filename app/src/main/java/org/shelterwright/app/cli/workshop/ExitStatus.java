package org.shelterwright.app.cli.workshop;

/** How a run of the command line ended; scripts rely on the numbers. */
public enum ExitStatus {
    /** Done, and every limit is met. */
    HELD(0),
    /** Done, but some limit is broken or not assessed, or something could not be taken over. */
    OPEN(1),
    /** The input, an option, or a place to read from or write to is wrong. */
    BAD_INPUT(2),
    /** The program failed. */
    FAILED(3);

    private final int number;

    ExitStatus(int number) {
        this.number = number;
    }

    public int number() {
        return number;
    }
}
