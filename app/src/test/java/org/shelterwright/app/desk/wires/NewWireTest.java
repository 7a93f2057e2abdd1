package org.shelterwright.app.desk.wires;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.app.desk.WorkAtOnce;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.builtin.BuiltInCatalog;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.edit.SetWires;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.samples.Samples;
import org.shelterwright.layouts.scene.Scene;

class NewWireTest {
    private static final List<Cable> CABLES =
            List.copyOf(BuiltInCatalog.entries().cables());

    private final Session session = new Session(
            Checker.standard(),
            LayoutFiles.read(Samples.layout("river-post").orElseThrow()).layout());
    private final Scene scene = session.now().scene();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``|rack-1/power|supply-3x1.5|From is empty. Give a unit and its port, such as rack-1/power.",
                "rack-9/power|rack-1/power|supply-3x1.5|From: nothing with ports is called \"rack-9\". Give a unit and its port,"
                        + " such as rack-1/power.",
                "power-unit/mains out|rack-1/powr|supply-3x1.5|To: \"rack-1\" has no port \"powr\". It has: ",
                "rack-1/power|rack-1/power|supply-3x1.5|The wire \"w",
                "power-unit/mains out|rack-1/power|``|Cable is empty. Choose the cable of the wire.",
                "power-unit/mains out|rack-1/power|rope|Cable: there is no cable \"rope\" in the catalog. Choose one of the list.",
                "power-unit/mains out|rack-1/power|data-4x2|Cable: ",
            })
    void whatIsWrongIsSaidWithItsField(String from, String to, String cable, String sentence) {
        assertThatThrownBy(() -> NewWire.of(scene, CABLES, from, to, cable))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith(sentence)
                .hasMessageMatching("(?s).*\\S\\.$");
    }

    @Test
    void aCableOfAnotherClassNamesBothClassesAndThePort() {
        assertThatThrownBy(() -> NewWire.of(scene, CABLES, "power-unit/mains out", "rack-1/power", "data-4x2"))
                .hasMessageContaining(" is of class signal, but ")
                .hasMessageEndingWith(" takes power. Choose a cable of that class, or another port.");
    }

    @Test
    void aWireIsAddedAndRoutedPinnedAndTakenOutInStepsThatCanBeUndone() {
        var before = session.now().layout();
        StringBuilder told = new StringBuilder();
        WireDesk desk = new WireDesk(session, new WorkAtOnce(), sentence -> {
            told.setLength(0);
            told.append(sentence);
        });
        SetWires step = NewWire.of(scene, CABLES, "power-unit/mains out", "rack-1/power", "supply-3x1.5");
        Wire wire = step.wires().get(step.wires().size() - 1);

        desk.add(step, wire.id());

        assertThat(told).hasToString("1 wire was routed.");
        assertThat(session.now().layout().routes()).containsKey(wire.id());
        assertThat(session.selection().wires().get()).containsExactly(wire.id());
        desk.pin(session.selection().wires().get());
        assertThat(session.now().layout().routes().get(wire.id()).pinned()).isTrue();
        assertThat(WireRow.of(session.now(), wire.id() + " pinned"))
                .extracting(WireRow::wire)
                .contains(wire.id());
        desk.remove(session.selection().wires().get());
        assertThat(session.now().layout().routes()).doesNotContainKey(wire.id());
        assertThat(session.now().history().undoNames().subList(0, 4))
                .containsExactly(
                        "Take out wire " + wire.id(),
                        "Pin the route of " + wire.id(),
                        "Route " + wire.id(),
                        "Add wire " + wire.id());
        for (int i = 0; i < 4; i++) {
            session.undo();
        }
        assertThat(session.now().layout()).isEqualTo(before);
    }

    @Test
    void endsThatACableFitsAreTakenForThoseThatAreMeant() {
        List<String> ports = NewWire.ends(scene, unit("power-unit"));

        NewWire.Ends ends = NewWire.likely(scene, CABLES, "rack-1/power", ports);

        assertThat(ends.from()).isEqualTo("rack-1/power");
        assertThat(NewWire.cables(scene, CABLES, ends.from(), ends.to())).isNotEmpty();
        assertThat(CABLES.stream()
                        .filter(cable -> NewWire.cables(scene, CABLES, ends.from(), ends.to())
                                .contains(cable.id())))
                .allMatch(cable -> cable.cableClass() == CableClass.POWER);
        NewWire.Ends other = NewWire.likely(
                scene,
                CABLES,
                "rack-1/power",
                NewWire.ends(scene, unit("rack-2")).stream()
                        .filter(end -> end.endsWith("network"))
                        .toList());
        assertThat(other)
                .as("no power cable goes to a network port")
                .isEqualTo(new NewWire.Ends("rack-1/network", "rack-2/network"));
    }

    @Test
    void theEndsOfTheUnitThatIsTypedAreOfferedFirst() {
        List<String> offered = NewWire.ends(scene, "power-unit/ma");

        int own = NewWire.ends(scene, unit("power-unit")).size();
        assertThat(offered.subList(0, own)).allMatch(end -> end.startsWith("power-unit/"));
        assertThat(offered).containsExactlyInAnyOrderElementsOf(NewWire.ends(scene));
    }

    private UnitSpec unit(String id) {
        return scene.brief().units().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aWireIsLedByChosenTraysOrItIsSaidWhyNot() {
        StringBuilder told = new StringBuilder();
        WireDesk desk = new WireDesk(session, new WorkAtOnce(), told::append);

        desk.through("w1", List.of("left signal tray"));
        assertThat(told)
                .hasToString(
                        "Wire w1 cannot be led by left signal tray: no way joins its ends through all of them. Choose"
                                + " other trays, or of its class.");
        told.setLength(0);
        desk.through("w7", List.of("left signal tray"));
        assertThat(told).hasToString("1 wire was routed.");
        Route led = session.now().layout().routes().get("w7");
        assertThat(led.pinned()).isTrue();
        assertThat(led.runs())
                .extracting(Run::tray)
                .contains("left signal tray")
                .allMatch(tray -> tray == null || tray.equals("left signal tray"));
        assertThat(session.now().history().undoNames().get(0)).isEqualTo("Route w7");
    }

    @Test
    void traysTellHowFullTheyAreAndOfWhat() {
        List<TrayRow> rows = TrayRow.of(scene);

        assertThat(rows).hasSizeGreaterThanOrEqualTo(4);
        assertThat(rows.get(0).use()).isGreaterThanOrEqualTo(rows.get(1).use());
        assertThat(rows.get(0).wires()).isNotEmpty();
        assertThat(rows.get(0).sentence()).contains(", filled to ").contains(" % of 40.0 % by w");
    }
}
