package org.shelterwright.layouts.file;

import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.layouts.brief.Brief;

/** The file formats of briefs and layouts. */
public final class LayoutFormats {
    public static final JsonFormat<Brief> BRIEF = JsonFormat.of("shelterwright-brief", 1, Brief.class);
    public static final JsonFormat<LayoutDocument> LAYOUT =
            JsonFormat.of("shelterwright-layout", 1, LayoutDocument.class);

    private LayoutFormats() {}
}
