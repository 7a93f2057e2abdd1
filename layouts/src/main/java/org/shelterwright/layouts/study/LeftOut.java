package org.shelterwright.layouts.study;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Leaves out the runs that have one of the named settings on each of the named axes.
 *
 * @param when ids of settings by the id of their axis
 */
public record LeftOut(Map<String, List<String>> when) {
    public LeftOut {
        Map<String, List<String>> copy = new LinkedHashMap<>();
        when.forEach((axis, settings) -> copy.put(axis, List.copyOf(settings)));
        when = Collections.unmodifiableMap(copy);
        if (when.isEmpty() || when.values().stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("Name at least one axis and one of its settings to leave out.");
        }
    }

    /** Whether a run with these settings, by their axes, is left out. */
    public boolean covers(Map<String, String> settings) {
        return when.entrySet().stream().allMatch(one -> one.getValue().contains(settings.get(one.getKey())));
    }
}
