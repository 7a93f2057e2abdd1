package org.shelterwright.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.TestIssue;
import org.shelterwright.catalog.json.InputException;

class ChaptersTest {
    private static final TestIssue GIVEN = TestIssue.riverPost();
    private static final Issue ISSUE =
            new Issue(GIVEN.scene(), GIVEN.ledger(), GIVEN.particulars(), "Shelterwright 0.1.0");

    @TempDir
    private Path folder;

    @Test
    void documentsStandInTheOrderOfTheChaptersWhicheverIsReadyFirst() {
        CountDownLatch secondDone = new CountDownLatch(1);
        Chapter slow = (set, issue, press) -> {
            await(secondDone);
            set.add(1, "slow.txt", "Slow", new byte[] {1});
        };
        Chapter quick = (set, issue, press) -> {
            set.add(2, "quick.txt", "Quick", new byte[] {2});
            secondDone.countDown();
        };

        List<Document> made = new Chapters("Shelterwright 0.1.0", 2)
                .make(List.of(slow, quick), ISSUE)
                .withContents(ISSUE);

        assertThat(made).extracting(Document::file).containsExactly("00-contents.txt", "01-slow.txt", "02-quick.txt");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void ofSeveralFailuresThatOfTheFirstChapterIsToldAsItWas(int threads) {
        CountDownLatch secondFailed = new CountDownLatch(threads == 1 ? 0 : 1);
        Chapter first = (set, issue, press) -> {
            await(secondFailed);
            throw new InputException("first", "The first cannot be made.");
        };
        Chapter second = (set, issue, press) -> {
            secondFailed.countDown();
            throw new IllegalStateException("The second cannot be made.");
        };

        assertThatThrownBy(() -> new Chapters("Shelterwright 0.1.0", threads).make(List.of(first, second), ISSUE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("The first cannot be made.");
    }

    @Test
    void oneThreadAndSeveralGiveTheSameBytesExceptWorkbooks() throws Exception {
        new Report("Shelterwright 0.1.0", 1)
                .write(GIVEN.scene(), GIVEN.ledger(), GIVEN.particulars(), folder.resolve("one"));
        List<Document> documents = new Report("Shelterwright 0.1.0", 3)
                .write(GIVEN.scene(), GIVEN.ledger(), GIVEN.particulars(), folder.resolve("three"));

        for (Document document : documents) {
            if (!document.file().endsWith(".xlsx")) {
                assertThat(document.bytes())
                        .as(document.file())
                        .isEqualTo(Files.readAllBytes(folder.resolve("one").resolve(document.file())));
            }
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        }
    }
}
