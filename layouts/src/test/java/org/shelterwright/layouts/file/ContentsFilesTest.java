package org.shelterwright.layouts.file;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.layouts.layout.Layout;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** The contents of a layout in its file, and what is said of bad ones. */
class ContentsFilesTest {
    private static final String TEXT =
            new String(LayoutFiles.bytes(FilledPost.layout()), StandardCharsets.UTF_8);

    private static Layout read(String text) {
        return LayoutFiles.read(new InputFile("post.json", text.getBytes(StandardCharsets.UTF_8))).layout();
    }

    private static void refused(String text, String sentence) {
        assertThatThrownBy(() -> read(text)).isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems())
                .extracting(Problem::sentence)
                .contains(sentence));
    }

    @Test
    void contentsReadBackAsTheyWere() {
        Layout layout = FilledPost.layout();

        assertThat(read(TEXT)).isEqualTo(layout);
        assertThat(layout.contents().places()).hasSize(2);
    }

    @Test
    void aLayoutWithoutPiecesHasNoContentsInItsFile() {
        assertThat(new String(LayoutFiles.bytes(SmallPost.layout()), StandardCharsets.UTF_8))
                .doesNotContain("contents");
    }

    @Test
    void anUnknownBayIsToldWithTheNearest() {
        refused(
                TEXT.replace("\"place\": \"bay\"", "\"place\": \"bayy\""),
                "The bay of item " + FilledPost.RACK.id() + " \"bayy\" is not known. Did you mean \"bay\"?");
    }

    @Test
    void aPieceBeyondTheUnitsIsRefused() {
        refused(
                TEXT.replace("\"lowest\": 3", "\"lowest\": 20"),
                "The piece \"radio\" reaches beyond the height units of the bay. Put it lower.");
    }

    @Test
    void aRackMountedPieceInADrawerIsRefused() {
        refused(
                TEXT.replace("\"lowest\": 3", "\"at\": [0, 0, 0], \"posture\": \"as-is\"")
                        .replace("\"place\": \"bay\"", "\"place\": \"drawer\""),
                "The piece \"radio\" is rack-mounted, and cannot ride in a stowage place. Give it another place.");
    }

    @Test
    void aPlaceGivesUnitsOrACorner() {
        assertThatThrownBy(() -> read(TEXT.replace("\"lowest\": 3", "\"kept\": true")))
                .isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems())
                        .extracting(Problem::sentence)
                        .anyMatch(one -> one.contains("must give either its lowest height unit, or the corner and the posture")));
    }

    @Test
    void aKindThatIsNotHeldIsRefused() {
        refused(
                TEXT.replace("\"kind\": \"radio\"", "\"kind\": \"rodio\""),
                "The kind of piece \"rodio\" is not known. Did you mean \"radio\"?");
    }

    @Test
    void aPieceAtAnUnknownUnitIsRefused() {
        assertThatThrownBy(() -> read(TEXT.replace("\"within\": \"" + FilledPost.UNIT + "\"", "\"within\": \"nowhere\"")))
                .isInstanceOfSatisfying(InputException.class, e -> assertThat(e.problems())
                        .extracting(Problem::sentence)
                        .anyMatch(one -> one.startsWith("The unit \"nowhere\" is not known.")));
    }

    @Test
    void aPieceOfAnUnknownTaskIsRefused() {
        refused(
                TEXT.replace("\"task\": \"watch\"", "\"task\": \"wotch\""),
                "The task \"wotch\" is not known. Did you mean \"watch\"?");
    }

    @Test
    void aBriefWithAKindThatTheCatalogLacksIsRefused() {
        Findings findings = BriefCheck.of(
                FilledPost.layout().brief(), Places.none("brief"), SmallPost.CATALOG, List.of());

        assertThat(findings.problems())
                .extracting(Problem::sentence)
                .anyMatch(one -> one.startsWith("The kind of piece \"radio\" is not known."));
    }
}
