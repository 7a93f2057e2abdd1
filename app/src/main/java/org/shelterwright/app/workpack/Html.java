package org.shelterwright.app.workpack;

import java.util.List;

/** Writes HTML text; what is put in as text can never become markup. */
final class Html {
    private final StringBuilder out = new StringBuilder();

    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.append(c);
            }
        }
        return safe.toString();
    }

    /** Markup of our own. */
    Html raw(String markup) {
        out.append(markup);
        return this;
    }

    Html text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** An element that holds text alone. */
    Html element(String name, String attributes, String text) {
        out.append('<').append(name);
        if (!attributes.isEmpty()) {
            out.append(' ').append(attributes);
        }
        out.append('>').append(escaped(text)).append("</").append(name).append('>');
        return this;
    }

    Html list(String name, String attributes, List<String> items) {
        raw("<" + name + (attributes.isEmpty() ? "" : " " + attributes) + ">");
        items.forEach(item -> element("li", "", item));
        return raw("</" + name + ">");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
