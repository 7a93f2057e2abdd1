package org.shelterwright.app.desk.transport;

import java.util.List;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.edit.ChangeCar;
import org.shelterwright.layouts.transport.edit.SetMethod;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** Which car a load goes on, and what the method of loading says of it. */
final class CarRows {
    private static final List<String> BRAKES =
            List.of("hand brake not stated", "hand brake set", "hand brake released");
    private static final List<String> GEARS = List.of("gear not stated", "in neutral", "gear engaged");

    private final JourneySession session;
    private final ChoiceBox<TransitCar> car = new ChoiceBox<>();
    private final ChoiceBox<String> brake = new ChoiceBox<>();
    private final ChoiceBox<String> gear = new ChoiceBox<>();
    private final CheckBox packed = new CheckBox("Packed from wall to wall");
    private final VBox node;
    private boolean showing;

    CarRows(JourneySession session) {
        this.session = session;
        car.setId("car-kind");
        car.setAccessibleText("Transit car");
        car.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable TransitCar shown) {
                return shown == null ? "" : shown.name();
            }

            @Override
            public @Nullable TransitCar fromString(String text) {
                return null;
            }
        });
        car.setOnAction(event -> takeCar());
        brake.getItems().setAll(BRAKES);
        brake.setAccessibleText("Hand brake of vehicles on it");
        brake.setOnAction(event -> takeMethod());
        gear.getItems().setAll(GEARS);
        gear.setAccessibleText("Gear of vehicles on it");
        gear.setOnAction(event -> takeMethod());
        packed.setOnAction(event -> takeMethod());
        for (ChoiceBox<?> box : List.of(car, brake, gear)) {
            box.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(box, Priority.ALWAYS);
        }
        node = new VBox(6, car, brake, gear, packed);
    }

    Region node() {
        return node;
    }

    void show() {
        PlacedLoad load = session.load().orElse(null);
        if (load == null) {
            return;
        }
        showing = true;
        List<TransitCar> cars =
                session.now().map(now -> now.scene().parts().transit().cars()).orElse(List.of());
        if (!car.getItems().equals(cars)) {
            car.getItems().setAll(cars);
        }
        car.setValue(load.car());
        Load.HandBrake set = load.load().handBrake();
        brake.setValue(BRAKES.get(set == null ? 0 : set == Load.HandBrake.SET ? 1 : 2));
        Load.Gear engaged = load.load().gear();
        gear.setValue(GEARS.get(engaged == null ? 0 : engaged == Load.Gear.NEUTRAL ? 1 : 2));
        boolean vehicles =
                load.pieces().stream().anyMatch(piece -> piece.shape().wheeled());
        StandPart.show(brake, vehicles);
        StandPart.show(gear, vehicles);
        packed.setSelected(load.load().packed());
        StandPart.show(packed, load.car().deck().clearHeight() != null);
        showing = false;
    }

    private void takeCar() {
        TransitCar chosen = car.getValue();
        session.load().ifPresent(load -> {
            if (!showing && chosen != null && !chosen.id().equals(load.car().id())) {
                session.apply(new ChangeCar(load.id(), chosen.id()));
            }
        });
    }

    private void takeMethod() {
        if (showing) {
            return;
        }
        session.load()
                .ifPresent(load -> session.apply(new SetMethod(
                        load.id(),
                        switch (Math.max(0, BRAKES.indexOf(brake.getValue()))) {
                            case 1 -> Load.HandBrake.SET;
                            case 2 -> Load.HandBrake.RELEASED;
                            default -> null;
                        },
                        switch (Math.max(0, GEARS.indexOf(gear.getValue()))) {
                            case 1 -> Load.Gear.NEUTRAL;
                            case 2 -> Load.Gear.ENGAGED;
                            default -> null;
                        },
                        packed.isSelected())));
    }
}
