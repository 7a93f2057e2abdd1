package org.shelterwright.solver.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MutationRunsTest {
    private final MutationRuns runs = new MutationRuns(Setting.of(new String[] {"--date", "2026-01-31"}, 0));

    @TempDir
    Path folder;

    @Test
    void scoresAreAddedUpBySubjectOverAllReports() throws Exception {
        write(
                "a/mutations.xml",
                mutation("heat.Cooling", "KILLED", true),
                mutation("heat.Cooling$1", "SURVIVED", false));
        write(
                "b/mutations.xml",
                mutation("heat.Heating", "NO_COVERAGE", false),
                mutation("heat.Heating", "TIMED_OUT", true));

        String text = runs.text(List.of(folder, folder.resolve("none")));

        assertThat(text).containsPattern("\\| heat \\| 2 \\| 4 \\| 2 \\| 1 \\| 50");
        assertThat(text).endsWith("Date: 2026-01-31.\n");
    }

    @Test
    void aSubjectIsThePackageOfItsClasses() {
        assertThat(MutationRuns.subject("org.shelterwright.layouts.ledger.restraint.group.Bolt"))
                .isEqualTo("restraint.group");
        assertThat(MutationRuns.subject("org.shelterwright.layouts.ledger.Row")).isEqualTo("the ledger itself");
        assertThat(MutationRuns.subject("org.shelterwright.catalog.space.Box")).isEqualTo("space");
    }

    @Test
    void withoutAReportItSaysWhatToDo() {
        assertThatThrownBy(() -> runs.text(List.of(folder)))
                .hasMessageStartingWith("There is no mutations.xml below ")
                .hasMessageEndingWith("Run the mutations first: DEVELOPERS.md, \"Test\".");
    }

    @Test
    void aReportThatIsCutOffIsRefused() throws Exception {
        Files.writeString(folder.resolve("mutations.xml"), "<mutations><mutation status='KILLED'");

        assertThatThrownBy(() -> runs.text(List.of(folder))).hasMessageContaining(" is not whole. ");
    }

    private static String mutation(String of, String status, boolean detected) {
        return "<mutation detected='" + detected + "' status='" + status
                + "'><mutatedClass>org.shelterwright.layouts.ledger." + of + "</mutatedClass></mutation>";
    }

    private void write(String name, String... mutations) throws Exception {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "<mutations partial='false'>" + String.join("", mutations) + "</mutations>");
    }
}
