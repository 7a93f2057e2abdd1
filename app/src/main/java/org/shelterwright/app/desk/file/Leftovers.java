package org.shelterwright.app.desk.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Unsaved work on samples that were never saved under a name, left by a window that ended without asking. It lies in the user's folder,
 * where nobody would look for it, so that it is told of at the next start, whatever is opened then.
 */
public final class Leftovers {
    /**
     * Work that is left.
     *
     * @param sample name of the sample that it began with
     * @param at when it was kept
     */
    public record Left(String sample, Instant at) {
        /** @param name of the sample, for people */
        public String sentence(String name, ZoneId zone, LocalDate today) {
            return "Unsaved work on " + name + ", which has no file yet, was kept (" + Recovery.when(at, zone, today)
                    + ").";
        }
    }

    private Leftovers() {}

    /**
     * What is left, except of what a window is open on.
     *
     * @param userFolder the user's folder of this program
     * @param samples names of all samples
     */
    public static List<Left> in(Path userFolder, List<String> samples) {
        Path folder = userFolder.resolve(Home.STAND_INS);
        return samples.stream().flatMap(name -> left(folder, name).stream()).toList();
    }

    private static Optional<Left> left(Path folder, String sample) {
        Path kept = folder.resolve(sample + Unsaved.ENDING);
        if (!Files.exists(kept)) {
            return Optional.empty();
        }
        Optional<Claim> claim = Claim.on(folder.resolve(sample + ".json"));
        claim.ifPresent(Claim::close);
        try {
            Instant at = Files.getLastModifiedTime(kept).toInstant();
            return claim.map(free -> new Left(sample, at));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
