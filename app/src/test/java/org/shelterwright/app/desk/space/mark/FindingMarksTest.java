package org.shelterwright.app.desk.space.mark;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Point3D;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.desk.space.eye.Eye;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

class FindingMarksTest {
    private static final String SENTENCE =
            "The way to the service zone \"front service\" of Telemetry rack 1 narrows to 100 mm"
                    + " between Telemetry rack 1, Telemetry rack 2, Desk, Winch crate, Sample refrigerator, Chart table and the right wall.";

    private final Typeface typeface = new Typeface();
    private final Glass glass = new Glass(new Eye(33, 37, Point3D.ZERO, 0.2, false, 1000, 700), 1);
    private final Row row = new Row(
            "access.walkway",
            Subject.ACCESS,
            "Way to Telemetry rack 1: front service",
            List.of("rack-1"),
            Box.ofMm(0, 0, 0, 100, 100, 100),
            "on station",
            Row.Sense.AT_LEAST,
            600.0,
            null,
            100.0,
            6.0,
            "mm",
            Verdict.BROKEN,
            SENTENCE,
            null,
            new Source("Common practice", null, Source.Trust.COMMON_PRACTICE));

    @Test
    void theWholeSentenceOfTheChosenFindingIsSaid() {
        assertThat(String.join(" ", tag().lines())).isEqualTo("F1, " + SENTENCE.substring(0, SENTENCE.length() - 1));
    }

    @Test
    void whereItHasNoRoomItSaysWhatItIsAbout() {
        Tag tag = tag();
        TagLook look = new TagLook(glass, typeface);
        TagPlacing small = new TagPlacing(Bounds.around(tag.place(), look.width(tag) - 2, 100), bounds -> 0, 60);
        List<Shape> shapes = new ArrayList<>();

        look.draw(List.of(tag), small, shapes);

        assertThat(shapes.stream().filter(Label.class::isInstance).map(shape -> ((Label) shape).text()))
                .containsExactlyElementsOf(tag.shorter().lines());
        assertThat(String.join(" ", tag.shorter().lines())).isEqualTo("F1, Way to Telemetry rack 1: front service");
    }

    private Tag tag() {
        FindingMarks marks =
                new FindingMarks(glass, List.of(row), one -> true, one -> Optional.ofNullable(one.place()));
        marks.mark(Finding.of(row), Set.of(), typeface);
        return marks.tag();
    }
}
