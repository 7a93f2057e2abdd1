package org.shelterwright.app.cli.verb;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.table.ImportResult;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.BriefOfList;
import org.shelterwright.layouts.file.BriefCheck;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.LayoutFormats;
import org.shelterwright.layouts.rules.RuleSet;
import picocli.CommandLine.Option;

/** The options of a verb that can write a first brief of an equipment list. */
final class FirstBrief {
    /** The rule set that is meant for every shelter. */
    private static final List<String> RULE_SETS = List.of("shelter-common");

    @Option(
            names = "--brief",
            paramLabel = "FILE",
            description =
                    "Write a brief too, which asks for each item as often as the list says. Needs --out and --body.")
    private @Nullable String file;

    @Option(names = "--body", paramLabel = "ID", description = "Body of that brief.")
    private @Nullable String body;

    @Option(names = "--carrier", paramLabel = "ID", description = "Carrier of that brief; none if not given.")
    private @Nullable String carrier;

    /** Where the brief is to be written, if one is asked for. */
    Optional<Path> path() {
        if (file == null && (body != null || carrier != null)) {
            throw refused("--brief", "A body or carrier is of use only for a brief. Name its file with --brief.");
        }
        return Optional.ofNullable(file).map(Inputs::path);
    }

    /**
     * The brief as a file.
     *
     * @param folder where the entries are written; {@code null} if they are not
     * @throws InputException if it would ask for what is not there
     */
    byte[] bytes(@Nullable String folder, ImportResult list, Catalog catalog, List<RuleSet> ruleSets) {
        String asked = body;
        if (folder == null) {
            throw refused("--out", "The brief needs the entries that it asks for. Name a folder for them with --out.");
        }
        if (asked == null) {
            throw refused("--body", "A brief needs a body. Name one of: shelterwright catalog list --kind body.");
        }
        Brief brief = Brief.named(id(), name(), asked)
                .carrier(carrier)
                .units(BriefOfList.units(list.items(), list.quantities()))
                .ruleSets(RULE_SETS)
                .build();
        List<Problem> problems = BriefCheck.of(brief, LayoutFiles.unknownPlaces(brief), with(catalog, list), ruleSets)
                .problems();
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return LayoutFormats.BRIEF.write(brief);
    }

    private String name() {
        String whole = Inputs.path(String.valueOf(file)).getFileName().toString();
        return whole.replaceFirst("(\\.brief)?\\.json$", "");
    }

    private String id() {
        String id =
                name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-").replaceAll("^[._-]+", "");
        return id.isEmpty() ? "brief" : id;
    }

    /** The catalog with the items of the list, which take the place of those of the same id. */
    private static Catalog with(Catalog catalog, ImportResult list) {
        Map<String, Item> items = new LinkedHashMap<>();
        catalog.items().forEach(item -> items.put(item.id(), item));
        list.items().forEach(item -> items.put(item.id(), item));
        return Catalog.of(
                new ArrayList<>(items.values()),
                catalog.bodies(),
                catalog.carriers(),
                catalog.cables(),
                catalog.pieces(),
                catalog.transit());
    }

    private static InputException refused(String option, String sentence) {
        return new InputException(List.of(new Problem(option, sentence)));
    }
}
