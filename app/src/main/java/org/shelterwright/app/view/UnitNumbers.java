package org.shelterwright.app.view;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.scene.Scene;

/** The item references of all documents: units counted from 1 in the order of the brief. */
public final class UnitNumbers {

    private UnitNumbers() {}

    /** References by unit id, in the order of the brief. */
    public static Map<String, Integer> of(Scene scene) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (UnitSpec unit : scene.brief().units()) {
            numbers.put(unit.id(), numbers.size() + 1);
        }
        return numbers;
    }
}
