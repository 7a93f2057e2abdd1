package org.shelterwright.layouts.rules;

import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.json.ResourceFolder;
import org.shelterwright.catalog.json.Sourced;

/** Reads rule sets: those that come with the program, one JSON file a set beside this class, and a person's own. */
public final class RuleSets {
    public static final JsonFormat<RuleSet> FORMAT = JsonFormat.of("shelterwright-rule-set", 1, RuleSet.class);

    private RuleSets() {}

    /**
     * The rule sets that come with the program, in the order of their file names.
     *
     * @throws InputException if one of the program's own files is wrong
     */
    public static List<RuleSet> builtIn() {
        return read(ResourceFolder.below(RuleSets.class));
    }

    /**
     * Reads a rule set.
     *
     * @throws InputException with everything that is wrong with the file
     */
    public static RuleSet read(Path file) {
        return read(List.of(InputFile.read(file))).get(0);
    }

    private static List<RuleSet> read(Collection<InputFile> files) {
        Map<String, RuleSet> sets = new LinkedHashMap<>();
        for (InputFile file : files) {
            Sourced<RuleSet> read = FORMAT.open(file);
            if (sets.putIfAbsent(read.value().id(), read.value()) != null) {
                throw new InputException(
                        read.places().key("id").text(),
                        "The rule set id \"" + read.value().id()
                                + "\" is given by another file too. Rename one of them.");
            }
        }
        return List.copyOf(sets.values());
    }
}
