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
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.table.EquipmentList;
import org.shelterwright.catalog.table.ImportNote.Kind;
import org.shelterwright.catalog.table.ImportResult;
import org.shelterwright.layouts.rules.RuleSet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
            "  shelterwright catalog import equipment.csv --out my-items",
            "  shelterwright catalog import equipment.csv --out my-items --brief my-brief.json --body box-4200"
        })
public final class CatalogImportVerb extends Verb {
    @Parameters(paramLabel = "FILE", description = "Equipment list: a CSV file, or the first sheet of an XLSX file.")
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "FOLDER",
            description = "Folder to write the entries into, one file each. If not given, nothing is written.")
    private @Nullable String out;

    @Mixin
    private final FirstBrief first = new FirstBrief();

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
        Path brief = first.path().orElse(null);
        writeNew(files(result, brief));
        result.items().stream()
                .filter(item -> entries().catalog().item(item.id()).isPresent())
                .forEach(item -> terminal()
                        .message("The item \"" + item.id() + "\" takes the place of the built-in one of the same id."));
        if (json()) {
            terminal().result(ImportJson.of(head(), status.number(), result, named, brief));
            return status;
        }
        tell(result, brief);
        return status;
    }

    private Map<Path, byte[]> files(ImportResult result, @Nullable Path brief) {
        Map<Path, byte[]> files = new LinkedHashMap<>();
        String named = out;
        if (named != null) {
            Path folder = Inputs.path(named);
            result.items()
                    .forEach(item -> files.put(folder.resolve(item.id() + ".json"), CatalogFormats.ITEM.write(item)));
        }
        if (brief != null) {
            List<RuleSet> ruleSets = workshop().checker().get().ruleSets();
            files.put(brief, first.bytes(named, result, entries().catalog(), ruleSets));
        }
        return files;
    }

    private void tell(ImportResult result, @Nullable Path brief) {
        String named = out;
        print(ImportText.lines(file, result));
        terminal().result("");
        if (named == null) {
            terminal().result("Nothing was written. Name a folder with --out to write the entries.");
        } else {
            Written told = new Written(Inputs.path(named));
            result.items().forEach(item -> told.add(item.id() + ".json", ""));
            print(told.lines());
        }
        if (brief != null) {
            terminal().result("");
            terminal().result("The brief is " + brief + ". Add wishes, rule sets and limits to it, then find places:");
            terminal().result("  shelterwright fit " + brief + " --catalog " + named);
        }
    }

    /**
     * Writes nothing if a file is there already and differs, or if one of the folders cannot be written to; else all, those of a
     * folder together.
     */
    private static void writeNew(Map<Path, byte[]> files) {
        List<Problem> taken = new ArrayList<>();
        files.forEach((file, bytes) -> {
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
        Map<Path, Map<String, byte[]>> folders = new LinkedHashMap<>();
        files.forEach((file, bytes) -> folders.computeIfAbsent(
                        file.toAbsolutePath().getParent(), folder -> new LinkedHashMap<>())
                .put(file.getFileName().toString(), bytes));
        Map<OutFolder, Map<String, byte[]>> opened = new LinkedHashMap<>();
        try {
            folders.forEach((folder, own) -> opened.put(OutFolder.open(folder), own));
            opened.forEach((folder, own) -> folder.fill(aside -> writeAll(own, aside)));
        } finally {
            opened.keySet().forEach(OutFolder::close);
        }
    }

    private static void writeAll(Map<String, byte[]> files, Path folder) throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
