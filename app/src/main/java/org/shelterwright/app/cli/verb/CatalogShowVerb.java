package org.shelterwright.app.cli.verb;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.CableText;
import org.shelterwright.app.cli.text.CatalogLine;
import org.shelterwright.app.cli.text.EntryText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.NearestName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows one catalog entry. */
@Command(
        name = "show",
        description =
                "Show a catalog entry. With --json it is printed as a file that you can change and use as your own.",
        footer = {
            "",
            "Examples:",
            "  shelterwright catalog show box-4200",
            "  shelterwright catalog show battery-box-24v --json > my-items/battery-box.json"
        })
public final class CatalogShowVerb extends Verb {
    @Parameters(paramLabel = "ID", description = "Id of an item, body, carrier, cable or piece.")
    private String id = "";

    @Mixin
    private final CatalogOption catalog = new CatalogOption();

    public CatalogShowVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return id;
    }

    @Override
    ExitStatus run() {
        Catalog all = catalog.over(entries());
        List<String> lines = new ArrayList<>();
        all.item(id)
                .ifPresent(item -> lines.addAll(json() ? file(CatalogFormats.ITEM.write(item)) : EntryText.of(item)));
        all.body(id)
                .ifPresent(body -> lines.addAll(json() ? file(CatalogFormats.BODY.write(body)) : EntryText.of(body)));
        all.carrier(id)
                .ifPresent(carrier ->
                        lines.addAll(json() ? file(CatalogFormats.CARRIER.write(carrier)) : EntryText.of(carrier)));
        all.cable(id)
                .ifPresent(
                        cable -> lines.addAll(json() ? file(CatalogFormats.CABLE.write(cable)) : CableText.of(cable)));
        all.piece(id)
                .ifPresent(
                        piece -> lines.addAll(json() ? file(CatalogFormats.PIECE.write(piece)) : EntryText.of(piece)));
        if (lines.isEmpty()) {
            List<String> known =
                    CatalogLine.of(all).stream().map(CatalogLine::id).toList();
            throw new InputException(
                    id,
                    "There is no such entry in the catalog."
                            + NearestName.of(id, known)
                                    .map(near -> " Did you mean \"" + near + "\"?")
                                    .orElse(" List what is there with: shelterwright catalog list."));
        }
        print(lines);
        return ExitStatus.HELD;
    }

    private static List<String> file(byte[] json) {
        return new String(json, StandardCharsets.UTF_8).lines().toList();
    }
}
