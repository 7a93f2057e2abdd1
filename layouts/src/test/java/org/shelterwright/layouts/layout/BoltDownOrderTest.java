package org.shelterwright.layouts.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.layouts.edit.RemoveUnit;
import org.shelterwright.layouts.edit.SetBoltDown;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.samples.Samples;

class BoltDownOrderTest {
    private final Layout layout =
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout();

    private static Layout read(String text) {
        return LayoutFiles.read(new InputFile("layout.json", text.getBytes(StandardCharsets.UTF_8)))
                .layout();
    }

    @Test
    void staysInTheFileOfTheLayout() {
        BoltDownOrder order = BoltDownOrder.of(List.of("desk", "rack-1"))
                .withBefore(List.of(new Before("desk", "rack-1", "paint")))
                .withFitters(3);
        String text = new String(LayoutFiles.bytes(layout.withBoltDown(order)), StandardCharsets.UTF_8);

        assertThat(read(text).boltDown()).isEqualTo(order);
    }

    @Test
    void saysWhatIsWrong() {
        assertThatThrownBy(() -> BoltDownOrder.of(List.of("desk", "desk")))
                .hasMessage("The bolt-down order names the unit \"desk\" twice. Remove one of them.");
        assertThatThrownBy(() -> BoltDownOrder.of(List.of()).withFitters(9))
                .hasMessage("The number of fitters must be 1 to 8, but is 9.");
        assertThatThrownBy(() -> new Before("desk", "desk", null))
                .hasMessage("The unit \"desk\" cannot be in before itself.");
    }

    @Test
    void aFileThatNamesAnotherUnitIsRefused() {
        String text = new String(
                        LayoutFiles.bytes(layout.withBoltDown(BoltDownOrder.of(List.of("desk")))),
                        StandardCharsets.UTF_8)
                .replace("{\"unit\": \"desk\"}", "{\"unit\": \"desc\"}");

        assertThatThrownBy(() -> read(text))
                .hasMessageEndingWith("The unit \"desc\" is not known. Did you mean \"desk\"?");
    }

    @Test
    void aUnitThatIsRemovedLeavesTheOrder() {
        Layout ordered = new SetBoltDown(BoltDownOrder.of(List.of("desk", "heater", "rack-1"))
                        .withBefore(List.of(new Before("heater", "desk", null))))
                .apply(layout);

        BoltDownOrder left = new RemoveUnit("heater").apply(ordered).boltDown();

        assertThat(left).isNotNull();
        assertThat(left.units()).containsExactly("desk", "rack-1");
        assertThat(left.before()).isEmpty();
    }

    @Test
    void anOrderOfUnknownUnitsIsNotSet() {
        assertThatThrownBy(() -> new SetBoltDown(BoltDownOrder.of(List.of("rack-9"))).apply(layout))
                .hasMessageStartingWith("The brief has no unit \"rack-9\".");
        assertThat(new SetBoltDown(null).name()).isEqualTo("Take the bolt-down order away");
        assertThat(new SetBoltDown(null).apply(layout).boltDown()).isNull();
    }
}
