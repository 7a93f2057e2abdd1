package org.shelterwright.catalog.json;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import tools.jackson.core.io.JsonStringEncoder;

/** Writes JSON that people can read: whatever fits on a line stays on one line. The same value gives the same bytes. */
final class NodeWriter {
    private static final int LINE = 110;
    private static final String STEP = "  ";
    private static final int PLAIN_DIGITS = 20;

    private NodeWriter() {}

    /** UTF-8 with a newline at the end. */
    static byte[] pretty(Node.ObjectNode root) {
        StringBuilder out = new StringBuilder();
        spread(root, "", out);
        return out.append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    /** One line without needless spaces. */
    static String compact(Node node) {
        StringBuilder out = new StringBuilder();
        inline(node, "", out);
        return out.toString();
    }

    private static void print(Node node, String indent, int used, StringBuilder out) {
        int start = out.length();
        inline(node, " ", out);
        if (listsObjects(node) || indent.length() + used + out.length() - start > LINE) {
            out.setLength(start);
            spread(node, indent, out);
        }
    }

    /** Whether it holds a list of objects, which stand on lines of their own. */
    private static boolean listsObjects(Node node) {
        if (node instanceof Node.ArrayNode array) {
            return array.elements().stream().anyMatch(Node.ObjectNode.class::isInstance);
        }
        return node instanceof Node.ObjectNode object
                && object.members().stream().anyMatch(member -> listsObjects(member.value()));
    }

    private static void spread(Node node, String indent, StringBuilder out) {
        String inner = indent + STEP;
        if (node instanceof Node.ObjectNode object && !object.members().isEmpty()) {
            String before = "{\n";
            for (Node.Member member : object.members()) {
                out.append(before).append(inner);
                int start = out.length();
                quoted(member.key(), out);
                out.append(": ");
                print(member.value(), inner, out.length() - start, out);
                before = ",\n";
            }
            out.append('\n').append(indent).append('}');
        } else if (node instanceof Node.ArrayNode array && !array.elements().isEmpty()) {
            String before = "[\n";
            for (Node element : array.elements()) {
                out.append(before).append(inner);
                print(element, inner, 0, out);
                before = ",\n";
            }
            out.append('\n').append(indent).append(']');
        } else {
            inline(node, " ", out);
        }
    }

    private static void inline(Node node, String space, StringBuilder out) {
        if (node instanceof Node.ObjectNode object) {
            String before = "{";
            for (Node.Member member : object.members()) {
                out.append(before);
                quoted(member.key(), out);
                out.append(':').append(space);
                inline(member.value(), space, out);
                before = "," + space;
            }
            out.append(object.members().isEmpty() ? "{}" : "}");
        } else if (node instanceof Node.ArrayNode array) {
            inline(array.elements(), space, out);
        } else if (node instanceof Node.TextNode text) {
            quoted(text.text(), out);
        } else if (node instanceof Node.NumberNode number) {
            out.append(digits(number.number()));
        } else {
            out.append(node.shown());
        }
    }

    private static void inline(List<Node> elements, String space, StringBuilder out) {
        String before = "[";
        for (Node element : elements) {
            out.append(before);
            inline(element, space, out);
            before = "," + space;
        }
        out.append(elements.isEmpty() ? "[]" : "]");
    }

    private static void quoted(String text, StringBuilder out) {
        out.append('"')
                .append(JsonStringEncoder.getInstance().quoteAsCharArray(text))
                .append('"');
    }

    private static String digits(BigDecimal number) {
        BigDecimal shortest = number.stripTrailingZeros();
        if (Math.abs((long) shortest.precision() - shortest.scale()) > PLAIN_DIGITS) {
            return shortest.toString();
        }
        return shortest.scale() < 0
                ? shortest.setScale(0, RoundingMode.UNNECESSARY).toPlainString()
                : shortest.toPlainString();
    }
}
