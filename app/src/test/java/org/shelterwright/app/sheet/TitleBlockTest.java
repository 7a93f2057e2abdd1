package org.shelterwright.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.type.Typeface;

class TitleBlockTest {
    private static final Spot CORNER = new Spot(400, 280);

    private final Typeface typeface = new Typeface();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Shelterwright 0.1.0, seed 1, 3200000 moves",
                "Shelterwright 0.1.0-SNAPSHOT, laid out with Shelterwright 0.0.9-SNAPSHOT, seed 1234567, 3200000 moves",
                "Shelterwright 0.1.0-SNAPSHOT, laid out with Shelterwright 0.0.9-SNAPSHOT, seed 9223372036854775807,"
                        + " 9223372036854775807 moves",
            })
    void whatADrawingWasMadeWithIsNeverCutOff(String program) {
        TitleBlock.Fields fields =
                new TitleBlock.Fields("post-ga", "Drawing", "Post", "plan", "1 / 2", "1:20", "A3", program);

        List<Label> labels = new TitleBlock(typeface)
                .shapes(CORNER, fields, Particulars.draft(LocalDate.of(2026, 1, 15))).stream()
                        .filter(Label.class::isInstance)
                        .map(Label.class::cast)
                        .toList();

        List<Label> made = labels.stream()
                .filter(label -> label.at().x() < CORNER.x() - 66 && label.at().y() > CORNER.y() - 10)
                .filter(label -> !label.text().equals("Made with"))
                .toList();
        assertThat(String.join(" ", made.stream().map(Label::text).toList())).isEqualTo(program);
        assertThat(made).allSatisfy(label -> {
            assertThat(label.at().x() + typeface.width(label)).isLessThan(CORNER.x() - 66);
            assertThat(label.at().y()).isLessThan(CORNER.y() - 0.5);
        });
    }
}
