package org.shelterwright.app.cli.verb;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.CatalogJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.CatalogLine;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists catalog entries. */
@Command(
        name = "list",
        description = "List the entries of the catalog.",
        footer = {
            "",
            "Examples:",
            "  shelterwright catalog list --kind body",
            "  shelterwright catalog list --kind rack --catalog my-items"
        })
public final class CatalogListVerb extends Verb {
    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description =
                    "Only items (item), bodies (body), carriers (carrier), cables (cable), pieces (piece), transit cars"
                            + " (transit-car), outlines (outline), lashings (lashing), or those of one kind, such as rack or"
                            + " flat-wagon.")
    private @Nullable String kind;

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public CatalogListVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return "catalog";
    }

    @Override
    ExitStatus run() {
        List<CatalogLine> all = CatalogLine.of(catalog.over(entries()));
        String wanted = kind;
        List<CatalogLine> lines = wanted == null
                ? all
                : all.stream().filter(line -> line.isA(wanted)).toList();
        if (lines.isEmpty() && wanted != null && !CatalogLine.kinds().contains(wanted)) {
            throw new InputException(
                    "--kind", "\"" + wanted + "\" is no kind." + NearestName.hint(wanted, CatalogLine.kinds()));
        }
        if (json()) {
            terminal().result(CatalogJson.list(head(), lines));
        } else {
            print(CatalogLine.table(lines));
        }
        return ExitStatus.HELD;
    }
}
