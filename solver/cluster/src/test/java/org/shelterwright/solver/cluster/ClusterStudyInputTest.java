package org.shelterwright.solver.cluster;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.study.StudyFiles;
import org.shelterwright.layouts.study.results.StudyFolder;

/** Wrong input is told before any cluster is asked. */
class ClusterStudyInputTest {
    @Test
    void oneFolderThatHoldsASealedStudyIsNeeded(@TempDir Path folder) {
        assertThat(ClusterStudy.status()).isEqualTo(2);
        assertThat(ClusterStudy.status("a", "b")).isEqualTo(2);
        assertThat(ClusterStudy.status(folder.toString())).isEqualTo(2);
    }

    @Test
    void aStudyThatAnotherVersionSealedIsRefused(@TempDir Path folder) throws IOException {
        String text = """
                {"format": "shelterwright-study", "version": 1, "id": "one", "name": "One", "brief": "sample:river-post",
                 "moves": 1000}
                """;
        StudyFiles other = new StudyFiles(BuiltInCatalog.read(), RuleSets.builtIn(), "0.0.9");
        StudyFolder.prepare(
                folder,
                other.open(new InputFile("study.json", text.getBytes(StandardCharsets.UTF_8)), null)
                        .study());

        assertThat(ClusterStudy.version()).isNotBlank().isNotEqualTo("0.0.9");
        assertThat(ClusterStudy.status(folder.toString())).isEqualTo(2);
        assertThat(folder.resolve(StudyFolder.RESULTS)).doesNotExist();
    }
}
