package org.shelterwright.app.desk.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.shelterwright.app.TestLayout;
import org.shelterwright.app.desk.file.OnFile;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.samples.Samples;

class FrameWordsTest {
    private static final Instant AT = Instant.parse("2026-03-01T12:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "0, 0, saved just now",
        "130, 3, 'saved 2 min ago, 3 changes since'",
        "7300, 1, 'saved 2 h ago, 1 change since'"
    })
    void theBandSaysWhenItWasSavedAndWhatChangedSince(int seconds, int changes, String words) {
        assertThat(SavedWords.of(onFile("a.json", null), changes, AT.plusSeconds(seconds)))
                .isEqualTo(words);
    }

    @Test
    void aLayoutWithoutAFileOrWithoutTheRightToSaveSaysSo() {
        assertThat(SavedWords.of(onFile(null, null), 0, AT)).isEqualTo("not saved yet");
        assertThat(SavedWords.of(onFile(null, null), 2, AT)).isEqualTo("not saved yet, 2 changes");
        assertThat(SavedWords.of(onFile("a.json", "no"), 2, AT)).isEqualTo("read only, 2 changes since");
    }

    @Test
    void aStationShowsTheWorstVerdictAndHowOften() {
        Ledger ledger = Checker.standard().check(TestLayout.riverPost());

        Page.Standing fitOut = Page.FIT_OUT.standing(ledger);

        assertThat(fitOut.verdict()).isEqualTo(ledger.worst());
        assertThat(fitOut.words())
                .isEqualTo(ledger.count(ledger.worst()) + " " + ledger.worst().word());
    }

    @Test
    void boltingDownWithoutAnOrderIsNoGoodNews() {
        Layout ordered = TestLayout.riverPost();
        Layout empty = Layout.empty(ordered.brief(), ordered.parts());

        Page.Standing standing = Page.BOLT_DOWN.standing(Checker.standard().check(empty));

        assertThat(standing.verdict()).isNull();
        assertThat(standing.words()).isEqualTo("no order yet");
    }

    @Test
    void whatIsSelectedStandsInTheStatusLineWithItsMass() {
        Layout layout =
                LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

        assertThat(StatusFacts.names(Set.of(), layout)).isEmpty();
        assertThat(StatusFacts.names(Set.of("desk"), layout)).isEqualTo("Desk, 82\u2009kg");
        assertThat(StatusFacts.names(Set.of("rack-1", "rack-2"), layout))
                .isEqualTo("Telemetry rack 1, Telemetry rack 2, 336\u2009kg");
        assertThat(StatusFacts.names(layout.placements().keySet(), layout)).startsWith("27 units, 1\u2009331");
    }

    @Test
    void aStationWithoutAnyLimitClaimsNothing() {
        Page.Standing standing = Page.TRANSPORT.standing(new Ledger(List.of()));

        assertThat(standing.verdict()).isNull();
        assertThat(standing.words()).isEqualTo("not checked yet");
    }

    @ParameterizedTest
    @EnumSource(Subject.class)
    void everySubjectCountsOnOnePage(Subject subject) {
        assertThat(Page.of(subject)).isNotNull();
    }

    private static OnFile<Layout> onFile(String name, String readOnly) {
        Layout layout = TestLayout.riverPost();
        return new OnFile<>(
                name == null ? null : Path.of(name), Fingerprint.NONE, layout, new Ledger(List.of()), 0, AT, readOnly);
    }
}
