package org.shelterwright.layouts.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The example of the guide is a study that can be run. */
class StudiesGuideTest {
    private static final Path GUIDE = Path.of("..", "docs", "user-guide-studies.md");

    @Test
    void theExampleOfTheGuideCanBeRun() throws IOException {
        Matcher example = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(GUIDE));
        assertThat(example.find()).isTrue();

        SealedStudy study = PostStudy.sealed(example.group(1).replace("my-brief.json", "sample:river-post"));

        assertThat(study.plan().count()).isEqualTo(15);
        for (int run = 1; run <= 15; run++) {
            assertThat(SealedStudy.refusal(study.start(study.plan().run(run)), PostStudy.RULE_SETS))
                    .isEmpty();
        }
    }
}
