package org.shelterwright.layouts.study;

import java.util.List;
import java.util.Optional;

/**
 * One thing that differs between the runs of a study, such as the body or the reserve of mass.
 *
 * @param id unique in the study, such as "body"
 * @param settings what it may be; each run takes one of them
 */
public record StudyAxis(String id, List<Setting> settings) {
    public StudyAxis {
        settings = List.copyOf(settings);
    }

    public Optional<Setting> setting(String wanted) {
        return settings.stream().filter(one -> one.id().equals(wanted)).findFirst();
    }
}
