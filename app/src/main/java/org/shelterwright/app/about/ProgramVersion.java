package org.shelterwright.app.about;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;

/**
 * The version of this program, as the build wrote it.
 *
 * @param number the version number, for example {@code 1.2.0}; never blank
 */
public record ProgramVersion(String number) {

    private static final String NAME = "Shelterwright";

    public ProgramVersion {
        if (number.isBlank()) {
            throw new IllegalArgumentException("The version number of the program is blank.");
        }
    }

    /**
     * Reads the version that the build wrote beside this class.
     *
     * @throws IllegalStateException if the program was built without it
     */
    public static ProgramVersion ofThisBuild() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new IllegalStateException("version.properties is missing from the program: build it again.");
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new ProgramVersion(Objects.requireNonNull(properties.getProperty("version"), "version"));
    }

    /** Gives the line that names program and version, for example {@code Shelterwright 1.2.0}. */
    public String line() {
        return NAME + " " + number;
    }
}
