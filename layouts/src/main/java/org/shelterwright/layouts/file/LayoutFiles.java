package org.shelterwright.layouts.file;

import java.nio.file.Path;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.json.Places;
import org.shelterwright.catalog.json.Sourced;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.layout.Layout;

/** Reads and writes files of briefs and layouts. */
public final class LayoutFiles {
    private LayoutFiles() {}

    /**
     * Reads a layout.
     *
     * @throws InputException with everything that is wrong with the file
     */
    public static OpenedLayout read(Path file) {
        return read(InputFile.read(file));
    }

    /**
     * Reads a layout from the content of a file.
     *
     * @throws InputException with everything that is wrong with it
     */
    public static OpenedLayout read(InputFile file) {
        Sourced<LayoutDocument> read = LayoutFormats.LAYOUT.open(file);
        Findings findings = new Findings();
        Layout layout = new LayoutAssembly(read.value(), read.places(), findings).layout();
        return new OpenedLayout(layout, Fingerprint.of(file.bytes()), findings.doubts());
    }

    /** A layout as it stands within a file of another format. */
    public static LayoutDocument document(Layout layout) {
        return LayoutDocument.of(layout);
    }

    /**
     * The layout that stands within a file of another format, checked as in a file of its own.
     *
     * @throws InputException with everything that is wrong with it
     */
    public static Layout layout(LayoutDocument document, Places places) {
        return new LayoutAssembly(document, places, new Findings()).layout();
    }

    /** What stands in the file of a layout. Equal layouts give equal bytes. */
    public static byte[] bytes(Layout layout) {
        return LayoutFormats.LAYOUT.write(LayoutDocument.of(layout));
    }

    /**
     * Saves a layout; see {@link SafeSave}.
     *
     * @param expected what the file held when it was read; {@link Fingerprint#NONE} if it is to be new
     * @return what the file holds now
     * @throws InputException in one sentence, with everything left as it was, if it cannot be saved
     */
    public static Fingerprint write(Layout layout, Path file, Fingerprint expected) {
        return new SafeSave().save(file, bytes(layout), expected);
    }

    /**
     * Reads a brief, without holding it against a catalog: see {@link BriefCheck}.
     *
     * @throws InputException with everything that is wrong with the file
     */
    public static Sourced<Brief> readBrief(Path file) {
        return LayoutFormats.BRIEF.open(InputFile.read(file));
    }

    /**
     * Saves a brief; see {@link SafeSave}.
     *
     * @param expected what the file held when it was read; {@link Fingerprint#NONE} if it is to be new
     * @return what the file holds now
     * @throws InputException in one sentence, with everything left as it was, if it cannot be saved
     */
    public static Fingerprint writeBrief(Brief brief, Path file, Fingerprint expected) {
        return new SafeSave().save(file, LayoutFormats.BRIEF.write(brief), expected);
    }

    /** Where nothing is known of the file that a brief came from. */
    public static Places unknownPlaces(Brief brief) {
        return Places.none("brief " + brief.id());
    }
}
