package org.shelterwright.layouts.study;

import org.shelterwright.catalog.json.JsonFormat;

/** The file formats of studies. */
public final class StudyFormats {
    public static final JsonFormat<Study> STUDY = JsonFormat.of("shelterwright-study", 1, Study.class);
    public static final JsonFormat<SealedStudy> SEALED =
            JsonFormat.of("shelterwright-sealed-study", 1, SealedStudy.class);

    private StudyFormats() {}
}
