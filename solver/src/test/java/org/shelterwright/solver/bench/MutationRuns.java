package org.shelterwright.solver.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The mutation score by subject, from the reports that lie in the modules. It runs no mutation itself. */
final class MutationRuns {
    private static final String LEDGER = "org.shelterwright.layouts.ledger.";
    private static final String CATALOG = "org.shelterwright.catalog.";

    private final Setting setting;

    MutationRuns(Setting setting) {
        this.setting = setting;
    }

    private static final class Score {
        private final Set<String> classes = new HashSet<>();
        private int all;
        private int found;
        private int unreached;

        void add(String of, String status, boolean detected) {
            classes.add(of.replaceAll("\\$.*", ""));
            all++;
            found += detected ? 1 : 0;
            unreached += status.equals("NO_COVERAGE") ? 1 : 0;
        }

        Object[] row(String name) {
            return new Object[] {name, classes.size(), all, found, unreached, 100.0 * found / all};
        }
    }

    String run() {
        return text(List.of(Path.of("catalog/target/pit-reports"), Path.of("layouts/target/pit-reports")));
    }

    String text(List<Path> folders) {
        Map<String, Score> scores = new TreeMap<>();
        folders.stream().flatMap(MutationRuns::reports).forEach(report -> read(report, scores));
        if (scores.isEmpty()) {
            throw new IllegalArgumentException("There is no mutations.xml below " + folders
                    + ". Run the mutations first: DEVELOPERS.md, \"Test\".");
        }
        Table table = new Table("subject", "classes", "mutants", "found", "of them reached by no test", "score (%)");
        scores.forEach((name, score) -> table.add(score.row(name)));
        return """
                # Which faults the tests would miss

                Small faults are put into the classes one at a time (pitest, its default set): a sum becomes a difference, a limit
                includes or leaves out its bound, a call is left out. The score is the share that a test of the same subject notices. Aim: 75 %%
                for exact geometry and for every subject of the ledger.

                %s
                Date: %s.
                """.formatted(table.text(), setting.date());
    }

    private static Stream<Path> reports(Path folder) {
        try (Stream<Path> files = Files.isDirectory(folder) ? Files.walk(folder) : Stream.empty()) {
            return files.filter(file -> file.endsWith("mutations.xml")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void read(Path report, Map<String, Score> scores) {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        try (InputStream in = Files.newInputStream(report)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in);
            String status = "";
            boolean detected = false;
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                    if (xml.getLocalName().equals("mutation")) {
                        status = xml.getAttributeValue(null, "status");
                        detected = Boolean.parseBoolean(xml.getAttributeValue(null, "detected"));
                    } else if (xml.getLocalName().equals("mutatedClass")) {
                        String of = xml.getElementText();
                        scores.computeIfAbsent(subject(of), key -> new Score()).add(of, status, detected);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XMLStreamException e) {
            throw new IllegalArgumentException("The report " + report + " is not whole. Run the mutations again.", e);
        }
    }

    /** The package below the ledger, such as "heat" or "restraint.group"; of the catalog, such as "space". */
    static String subject(String of) {
        String inside = of.substring(0, of.lastIndexOf('.') + 1);
        String name = inside.startsWith(LEDGER)
                ? inside.substring(LEDGER.length())
                : inside.startsWith(CATALOG) ? inside.substring(CATALOG.length()) : inside;
        return name.isEmpty() ? "the ledger itself" : name.substring(0, name.length() - 1);
    }
}
