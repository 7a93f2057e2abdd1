package org.shelterwright.app.desk.item;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

class ItemReadingTest {
    private final List<Item> catalog = List.copyOf(BuiltInCatalog.entries().items());
    private final ItemDraft rack = ItemDraft.of(item("rack-19-34u"));

    @Test
    void everyItemOfTheCatalogComesBackAsItWas() {
        assertThat(catalog).isNotEmpty().allSatisfy(item -> {
            ItemReading read = ItemReading.of(ItemDraft.of(item));
            assertThat(read.faults()).as(item.id()).isEmpty();
            assertThat(read.item()).contains(item);
        });
    }

    @Test
    void whatIsTypedComesInWithItsUnits() {
        ItemDraft draft = rack.with(Figure.NAME, " Rack of ours ")
                .with(Figure.MASS, "120,5 kg")
                .with(Figure.CENTRE, "1 ft; 300; 0.5 m")
                .with(Figure.GROWTH, "12 %")
                .with(Figure.UNCERTAINTY, "")
                .mounted(Set.of(Surface.FLOOR, Surface.ON_UNIT), false);

        Item read = ItemReading.of(draft).item().orElseThrow();

        assertThat(read.name()).isEqualTo("Rack of ours");
        assertThat(read.mass().massKg()).isEqualTo(120.5);
        assertThat(read.mass().centre()).isEqualTo(new Point(304_800, 300_000, 500_000));
        assertThat(read.mass().growthShare()).isEqualTo(0.12);
        assertThat(read.mass().uncertaintyKg()).isNull();
        assertThat(read.mounting().surfaces()).containsExactlyInAnyOrder(Surface.FLOOR, Surface.ON_UNIT);
        assertThat(CatalogFormats.ITEM.read(CatalogFormats.ITEM.write(read), "written"))
                .as("a file holds it")
                .isEqualTo(read);
        assertThat(new String(CatalogFormats.ITEM.write(read), StandardCharsets.UTF_8))
                .contains("\"massKg\": 120.5");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NAME        | ''     | An item needs a name.",
                "DEPTH       | -3     | The size of -3 mm must be above zero.",
                "WIDTH       | wide   | \"wide\" is no length. Type a number or a sum, such as 25.4, 1.2 m, 3 in or 450+25.",
                "HEIGHT      | ''     | A length is missing. Type a number, such as 450 or 1.2 m.",
                "MASS        | heavy  | \"heavy\" is no mass. Type kilograms, such as 48.5, or nothing if it is not known.",
                "MASS        | -1     | The mass (kg) of -1.0 must be from 0.0 to 100000.0.",
                "MASS        | 40000  | The mass of 40000 kg of item rack-19-34u makes 57720 kg/m³ over its size, denser than lead. Correct the mass (kg) or the size (mm).",
                "UNCERTAINTY | -2     | The mass uncertainty (kg) of -2.0 must be from 0.0 to 100000.0.",
                "GROWTH      | 140 %  | The growth share of 1.4 must be from 0.0 to 1.0.",
                "GROWTH      | much   | \"much\" is no share. Type a percentage, such as 5, or nothing for the usual one.",
                "CENTRE      | 300    | \"300\" is no place. Type three lengths along x, y and z, such as 600 0 0, or 1.2 m; 3 in; 0.",
                "STACKING    | -5     | The mass stacked on it (kg) of -5.0 must be at least 0.0.",
            })
    void aBadFigureIsRefusedBesideItsField(Figure figure, String text, String sentence) {
        ItemReading read = ItemReading.of(rack.with(figure, text));

        assertThat(read.item()).isEmpty();
        assertThat(read.faults()).containsEntry(figure.id(), sentence).hasSize(1);
    }

    @Test
    void figuresThatDoNotGoTogetherAreRefused() {
        ItemDraft heights = rack.with(Figure.LOWEST, "900").with(Figure.HIGHEST, "700");
        ItemDraft nowhere = rack.mounted(Set.of(), false);
        ItemDraft still = rack.turned(Set.of());
        ItemDraft beyond = rack.withSolids(List.of(rack.solids().get(0).with("plinth", "0 0 0", "800 600 80")));
        ItemDraft flat = rack.withZones(List.of(rack.zones().get(0).with("front", "700 0 0", "700 600 1900")));
        ItemDraft bolt = rack.withFixings(
                List.of(new Line.Bolt("F1", "50 50 0", rack.fixings().get(0).face(), " ", "8.8")));

        assertThat(ItemReading.of(heights).fault("item-highest"))
                .contains("The lowest mounting height must not be above the highest.");
        assertThat(ItemReading.of(nowhere).fault("surfaces"))
                .contains("An item must be mountable on at least one surface.");
        assertThat(ItemReading.of(still).fault("turns"))
                .contains("An item needs at least one turn in which it may stand.");
        assertThat(ItemReading.of(beyond).fault("solids"))
                .contains("The solid \"plinth\" of item rack-19-34u reaches beyond the size of the item.");
        assertThat(ItemReading.of(flat).fault("zones-0")).contains("The clear zone \"front\" has no thickness.");
        assertThat(ItemReading.of(bolt).fault("fixings-0")).contains("A fixing needs a thread, such as M10.");
    }

    @Test
    void aFigureThatStandsOutIsDoubtedAndTaken() {
        ItemReading read = ItemReading.of(rack.with(Figure.MASS, "2"));

        assertThat(read.item()).isPresent();
        assertThat(read.doubts())
                .containsExactly("The mass of 2 kg of item rack-19-34u makes 3 kg/m³ over its size, lighter than foam."
                        + " Is it right?");
    }

    @Test
    void whatLiesAtAFarFaceGoesWithIt() {
        ItemDraft deeper = Stretch.typed(rack, Figure.DEPTH, "800");

        Item read = ItemReading.of(deeper).item().orElseThrow();

        assertThat(read.size()).isEqualTo(Size.ofMm(800, 600, 1650));
        assertThat(read.solids())
                .allSatisfy(solid -> assertThat(solid.box().x1()).isEqualTo(800_000));
        assertThat(read.zones().get(0).box()).isEqualTo(Box.ofMm(800, 0, 0, 1562, 600, 1900));
        assertThat(read.movableParts().get(0).sweep().x0()).isEqualTo(800_000);
        assertThat(read.fixings()).as("feet stay").isEqualTo(item("rack-19-34u").fixings());
        assertThat(ItemReading.of(Stretch.typed(deeper, Figure.DEPTH, "700")).item())
                .as("and back")
                .contains(item("rack-19-34u"));
    }

    @Test
    void aNewItemBeginsAsAPlainBoxAndGetsAnIdOfItsOwn() {
        Item blank = ItemReading.of(ItemDraft.of(NewItem.blank()).with(Figure.NAME, "Rope chest, 2 m"))
                .item()
                .orElseThrow();

        assertThat(NewItem.named(blank, Set.of()).id()).isEqualTo("rope-chest-2-m");
        assertThat(NewItem.named(blank, Set.of("rope-chest-2-m", "rope-chest-2-m-2"))
                        .id())
                .isEqualTo("rope-chest-2-m-3");
        assertThat(ItemDraft.of(blank).kept()).isEmpty();
        assertThat(rack.kept()).contains("2 movable parts", "what it draws");
    }

    private Item item(String id) {
        return catalog.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }
}
