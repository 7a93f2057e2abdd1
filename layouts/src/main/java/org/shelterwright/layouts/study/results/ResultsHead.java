package org.shelterwright.layouts.study.results;

import org.shelterwright.layouts.study.SealedStudy;

/**
 * Whose results a file holds.
 *
 * @param study id of the study
 * @param sha256 fingerprint of the sealed study
 * @param runs how many runs it has
 */
public record ResultsHead(String study, String sha256, int runs) {
    static ResultsHead of(SealedStudy study) {
        return new ResultsHead(
                study.study().id(), study.fingerprint(), study.plan().count());
    }
}
