package org.shelterwright.app.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.json.ImportJson;
import org.shelterwright.app.cli.terminal.Terminal;
import org.shelterwright.app.cli.text.ImportText;
import org.shelterwright.app.cli.workshop.ExitStatus;
import org.shelterwright.app.cli.workshop.Inputs;
import org.shelterwright.app.cli.workshop.OutFolder;
import org.shelterwright.app.cli.workshop.Workshop;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.table.EquipmentList;
import org.shelterwright.catalog.table.ImportNote.Kind;
import org.shelterwright.catalog.table.ImportResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes catalog entries of a person's equipment list. */
@Command(
        name = "import",
        description = {
            "Make catalog entries of an equipment list (CSV or XLSX).",
            "How its columns were understood is shown, and every cell that was dropped, doubtful or filled in is listed."
        },
        footer = {
            "",
            "The status is 0 if all of it was taken over, 1 if a row or cell was left out or is doubtful.",
            "No file that is there already is written over.",
            "",
            "Examples:",
            "  shelterwright catalog import equipment.xlsx",
            "  shelterwright catalog import equipment.csv --out my-items"
        })
public final class CatalogImportVerb extends Verb {
    @Parameters(paramLabel = "FILE", description = "Equipment list: a CSV file, or the first sheet of an XLSX file.")
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder to write the entries into, one file each. If not given, nothing is written.")
    private @Nullable String out;

    public CatalogImportVerb(Workshop workshop, Terminal terminal) {
        super(workshop, terminal);
    }

    @Override
    public String place() {
        return file;
    }

    @Override
    ExitStatus run() {
        ImportResult result = EquipmentList.read(Inputs.path(file));
        boolean whole = result.notes().stream()
                .noneMatch(note -> note.kind() == Kind.ROW_LEFT_OUT
                        || note.kind() == Kind.DROPPED
                        || note.kind() == Kind.DOUBTFUL);
        ExitStatus status = whole && !result.items().isEmpty() ? ExitStatus.HELD : ExitStatus.OPEN;
        String named = out;
        List<String> written = named == null ? List.of() : write(result.items(), Inputs.path(named));
        result.items().stream()
                .filter(item -> entries().catalog().item(item.id()).isPresent())
                .forEach(item -> terminal()
                        .message("The item \"" + item.id() + "\" takes the place of the built-in one of the same id."));
        if (json()) {
            terminal().result(ImportJson.of(head(), status.number(), result, named, written));
            return status;
        }
        print(ImportText.lines(file, result));
        terminal().result("");
        if (named == null) {
            terminal().result("Nothing was written. Name a folder with --out to write the entries.");
        } else {
            print(Written.lines(Inputs.path(named), written));
        }
        return status;
    }

    private static List<String> write(List<Item> items, Path folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        items.forEach(item -> files.put(item.id() + ".json", CatalogFormats.ITEM.write(item)));
        List<Problem> taken = new ArrayList<>();
        files.forEach((name, bytes) -> {
            Path file = folder.resolve(name);
            if (Files.exists(file) && !Arrays.equals(InputFile.read(file).bytes(), bytes)) {
                taken.add(
                        new Problem(
                                file.toString(),
                                "There is another file of this name already. Nothing was written. Move it, or name another folder."));
            }
        });
        if (!taken.isEmpty()) {
            throw new InputException(taken);
        }
        try (OutFolder opened = OutFolder.open(folder)) {
            return opened.fill(aside -> writeAll(files, aside));
        }
    }

    private static void writeAll(Map<String, byte[]> files, Path folder) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
