package org.shelterwright.app.cli.json;

/** The result of {@code desk} as JSON: that the window was closed. */
public final class DeskJson {
    private DeskJson() {}

    /** Gives the result. */
    public static String of(ResultHead head, int status) {
        return JsonText.write(head.begin().put("status", status));
    }
}
