package org.shelterwright.layouts.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.brief.Duty;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.edit.PinRoute;
import org.shelterwright.layouts.edit.RemoveUnit;
import org.shelterwright.layouts.edit.SetRoutes;
import org.shelterwright.layouts.edit.SetWires;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.samples.Samples;

class WireFilesTest {
    private static String text() {
        InputFile file = Samples.layout("river-post").orElseThrow();
        return new String(file.bytes(), StandardCharsets.UTF_8);
    }

    private static OpenedLayout read(String text) {
        return LayoutFiles.read(new InputFile("post.json", text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void routesComeBackAsTheyWereSaved() {
        Layout layout = read(text()).layout();

        assertThat(layout.routes()).hasSizeGreaterThan(20);
        assertThat(read(new String(LayoutFiles.bytes(layout), StandardCharsets.UTF_8))
                        .layout())
                .isEqualTo(layout);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"wire\": \"w7\"|\"wire\": \"w77\"|The wire \"w77\" is not known.",
                "\"wire\": \"w7\"|\"wire\": \"w6\"|The wire \"w6\" is routed twice. Remove one of the routes.",
                "\"cable\": \"data-4x2\"|\"cable\": \"data-4x3\"|The cable \"data-4x3\" is not known.",
                "\"tray\": \"left signal tray\"|\"tray\": \"left tray\"|The tray \"left tray\" is not known.",
            })
    void aRouteOfSomethingUnknownIsRefusedWithItsPlace(String old, String changed, String sentence) {
        int routes = text().indexOf("\"routes\"");
        String broken = text().substring(0, routes) + text().substring(routes).replaceFirst(old, changed);

        assertThatThrownBy(() -> read(broken))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("post.json, line")
                .hasMessageContaining(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"width\": 100|\"width\": 0|The tray \"left power tray\" must have a width and a depth, but is 0 x 60 mm.",
                "\"depth\": 60|\"depth\": 0|The tray \"left power tray\" must have a width and a depth, but is 100 x 0 mm.",
                "\\[4100, 2220, 1980\\]|[100, 2220, 1980]|Each section of tray \"left power tray\" must run along one axis,"
                        + " from one point to another, but one ends where it begins.",
            })
    void aTrayWithoutASizeIsRefusedWithItsPlace(String old, String changed, String sentence) {
        int tray = text().indexOf("\"left power tray\"", text().indexOf("\"trays\""));
        String broken = text().substring(0, tray) + text().substring(tray).replaceFirst(old, changed);

        assertThatThrownBy(() -> read(broken))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("post.json, line")
                .hasMessageContaining(sentence);
    }

    @Test
    void aWireToItselfOrWithoutACableIsRefused() {
        assertThatThrownBy(() -> new Wire("w1", "a/p", "a/p", "c", null))
                .hasMessage("The wire \"w1\" goes from a/p to itself. Give the port that it goes to as \"to\".");
        assertThatThrownBy(() -> new Wire("w1", "a/p", "b/p", null, null, null, null, null, null, null))
                .hasMessage("The wire \"w1\" must name its cable as \"type\", or a \"family\" to choose from.");
        assertThatThrownBy(() -> new Wire("w1", "a/p", "b/p", "c", null, "f", null, null, null, null))
                .hasMessage("The wire \"w1\" must name either its \"type\" or a \"family\" to choose from, not both.");
        assertThatThrownBy(() -> new Wire("w1", "a/p", "b/p", "c", 0))
                .hasMessage("The greatest length of wire \"w1\" must be above zero, but is 0 mm.");
        assertThatThrownBy(() -> new Duty(24.0, 2, null, null, null, null))
                .hasMessage("The phases of a duty, 2, must be 1 or 3.");
        assertThatThrownBy(() -> new Duty(-24.0, null, null, null, null, null))
                .hasMessage("The voltage (V) of -24.0 must be above zero.");
    }

    @Test
    void editsKeepRoutesInStepWithTheWires() {
        Layout layout = read(text()).layout();

        Layout pinned = new PinRoute("w7", true).apply(layout);
        assertThat(pinned.routes().get("w7").pinned()).isTrue();
        assertThat(new SetRoutes(List.of(layout.routes().get("w7"))).apply(pinned))
                .isEqualTo(layout);
        assertThatThrownBy(() -> new PinRoute("w77", true).apply(layout))
                .hasMessage("The wire \"w77\" has no route to pin. Route it first.");
        assertThat(new RemoveUnit("heater").apply(layout).routes())
                .doesNotContainKey("w17")
                .containsKey("w7");
        List<Wire> without = layout.brief().wires().stream()
                .filter(wire -> !wire.id().equals("w1"))
                .toList();
        Layout fewer = new SetWires(without, List.of()).apply(layout);
        assertThat(fewer.brief().wires()).hasSize(without.size());
        assertThat(fewer.routes()).doesNotContainKey("w1").containsKey("w2");
    }
}
