package org.shelterwright.catalog.builtin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Solid;
import org.shelterwright.catalog.item.Support;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.ResourceFolder;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;

class BuiltInDataTest {
    private static final CatalogEntries ENTRIES = BuiltInCatalog.entries();

    static Stream<Item> items() {
        return ENTRIES.items().stream();
    }

    static Stream<Body> bodies() {
        return ENTRIES.bodies().stream();
    }

    static Stream<Item> itemsWithFixingsInABody() {
        return items().filter(item -> !item.fixings().isEmpty())
                .filter(item -> item.mounting().surfaces().stream()
                        .anyMatch(surface -> surface != Surface.ON_UNIT && surface != Surface.UNDER_UNIT));
    }

    @Test
    void holdsTheEntriesThatTheProgramPromises() {
        assertThat(ENTRIES.items()).hasSizeGreaterThanOrEqualTo(44);
        assertThat(ENTRIES.bodies())
                .extracting(Body::id)
                .containsExactlyInAnyOrder("box-4200", "box-6000", "container-10", "container-20", "panel-van");
        assertThat(ENTRIES.carriers()).hasSize(4);
        assertThat(ENTRIES.fasteners()).hasSize(2);
    }

    @Test
    void namesEachFileByTheIdInIt() {
        for (InputFile file : ResourceFolder.below(BuiltInCatalog.class)) {
            String name =
                    file.name().substring(file.name().lastIndexOf('/') + 1).replace(".json", "");

            assertThat(new String(file.bytes(), StandardCharsets.UTF_8))
                    .as(file.name())
                    .contains("\"id\": \"" + name + "\"");
        }
    }

    @ParameterizedTest
    @MethodSource("items")
    void givesEachItemASizeThatItsSolidsJustFill(Item item) {
        Box hull = item.solids().stream().map(Solid::box).reduce(Box::hull).orElseThrow();

        assertThat(hull).isEqualTo(item.size().box());
        for (Situation situation : Situation.values()) {
            List<Box> solids = item.solids(situation);
            for (int i = 0; i < solids.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(solids.get(i).overlaps(solids.get(j)))
                            .as("solids %d and %d %s", i, j, situation)
                            .isFalse();
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("items")
    void givesEachItemAMassWithItsCentreWithin(Item item) {
        Point centre = item.mass().centre();

        assertThat(item.mass().massKg()).isNotNull().isPositive();
        assertThat(centre).isNotNull();
        assertThat(item.size().box().contains(centre)).isTrue();
        assertThat(item.note()).startsWith("Invented");
    }

    @ParameterizedTest
    @MethodSource("items")
    void placesFixingsPortsAndSupportsOnTheItem(Item item) {
        Box box = item.size().box();
        for (Fixing fixing : item.fixings()) {
            assertThat(box.face(fixing.face()).contains(fixing.at()))
                    .as(fixing.name())
                    .isTrue();
            assertThat(ENTRIES.fasteners().stream()
                            .flatMap(table -> table.fasteners().stream())
                            .anyMatch(bolt -> bolt.thread().equals(fixing.thread())
                                    && bolt.grade().equals(fixing.grade())))
                    .as(fixing.name())
                    .isTrue();
        }
        assertThat(item.ports())
                .allSatisfy(port -> assertThat(box.contains(port.at())).isTrue());
        for (Support support : item.supports()) {
            Rect area = support.area();
            assertThat(box.contains(new Point(area.x0(), area.y0(), support.height())))
                    .isTrue();
            assertThat(box.contains(new Point(area.x1(), area.y1(), support.height())))
                    .isTrue();
        }
        assertThat(item.movableParts())
                .allSatisfy(part -> assertThat(part.securedBy()).isNotBlank());
    }

    @ParameterizedTest
    @MethodSource("itemsWithFixingsInABody")
    void lendsEachFixingPatternToABody(Item item) {
        assertThat(bodies().filter(body -> new Landing(item, body).possible()).map(Body::id))
                .isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("bodies")
    void givesEachBodyTwoWaysOutAndStrengthsForAllHardPoints(Body body) {
        assertThat(body.openings().stream().filter(Opening::exit)).hasSizeGreaterThanOrEqualTo(2);
        for (Opening opening : body.openings()) {
            Box wall = body.inside().box().face(opening.wall());
            assertThat(wall.contains(opening.area())).as(opening.name()).isTrue();
        }
        assertThat(body.hardPoints()).allSatisfy(point -> {
            assertThat(body.inside().box().face(point.surface()).contains(point.outline()))
                    .isTrue();
            assertThat(point.strength().pullOutN()).isNotNull();
            assertThat(point.strength().shearN()).isNotNull();
        });
        assertThat(body.hardPoints()).extracting(point -> point.surface()).contains(Face.BOTTOM, Face.TOP, Face.LEFT);
        assertThat(body.tare().massKg()).isNotNull();
        assertThat(body.provisions()).hasSizeGreaterThanOrEqualTo(6);
    }
}
