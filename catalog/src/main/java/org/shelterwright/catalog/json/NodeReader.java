package org.shelterwright.catalog.json;

import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;

/** Reads one JSON object from hostile text: bounded in size, depth and count, every value with its place. */
final class NodeReader {
    /** Deepest nesting of lists and objects. */
    static final int DEEPEST = 64;

    /** Most values, keys and brackets in one file. */
    static final int MOST_TOKENS = 2_000_000;

    private static final int LONGEST_NUMBER = 40;
    private static final int GREATEST_EXPONENT = 30;

    /** The reader's own bounds strike first, with better words; these are the wall behind them. */
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(2 * DEEPEST)
                    .maxDocumentLength(InputFile.LARGEST)
                    .maxTokenCount(2L * MOST_TOKENS)
                    .maxStringLength(100 * Texts.LONGEST)
                    .maxNameLength(100 * Texts.LONGEST)
                    .maxNumberLength(1_000)
                    .build())
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    private final String name;
    private final String text;
    private final JsonParser parser;
    private final List<Spot> open = new ArrayList<>();
    private int tokens;

    private NodeReader(String name, String text) {
        this.name = name;
        this.text = text;
        this.parser = FACTORY.createParser(ObjectReadContext.empty(), text);
    }

    /**
     * Reads the one object of a file.
     *
     * @throws InputException if the bytes are anything else
     */
    static Node.ObjectNode read(InputFile file) {
        String text = decoded(file);
        if (text.isBlank()) {
            throw new InputException(file.name(), "The file is empty, but one JSON object is needed.");
        }
        NodeReader reader = new NodeReader(file.name(), text);
        try (JsonParser parser = reader.parser) {
            Node root = reader.value(reader.next());
            if (!(root instanceof Node.ObjectNode object)) {
                throw reader.at(
                        root.spot(), "The file must hold one JSON object in braces, but holds " + root.shown() + ".");
            }
            if (parser.nextToken() != null) {
                throw reader.at(reader.spot(), "There is more text after the end of the object. Remove it.");
            }
            return object;
        } catch (UnexpectedEndOfInputException e) {
            throw reader.cutOff(e.getLocation());
        } catch (JacksonException e) {
            throw reader.syntax(e);
        }
    }

    private static String decoded(InputFile file) {
        if (file.bytes().length > InputFile.LARGEST) {
            throw new InputException(file.name(), "The text is larger than 20 MB.");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file.bytes()))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new InputException(
                    file.name(), "The file is no text in UTF-8. Maybe it is no JSON file; otherwise save it as UTF-8.");
        }
    }

    private @Nullable JsonToken next() {
        if (++tokens > MOST_TOKENS) {
            throw at(spot(), "The file holds more than " + MOST_TOKENS + " values. Split it.");
        }
        return parser.nextToken();
    }

    private Node value(@Nullable JsonToken token) {
        Spot spot = spot();
        if (token == null) {
            throw at(spot, "The file ends where a value is needed. Maybe it was cut off: get it again.");
        }
        return switch (token) {
            case START_OBJECT -> object(spot);
            case START_ARRAY -> array(spot);
            case VALUE_STRING -> new Node.TextNode(spot, text(spot, "The text", parser.getString()));
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(spot);
            case VALUE_TRUE -> new Node.BooleanNode(spot, true);
            case VALUE_FALSE -> new Node.BooleanNode(spot, false);
            case VALUE_NULL -> new Node.NullNode(spot);
            default -> throw at(spot, "A value is needed here.");
        };
    }

    private Node.ObjectNode object(Spot spot) {
        enter(spot);
        Map<String, Spot> seen = new HashMap<>();
        List<Node.Member> members = new ArrayList<>();
        while (next() == JsonToken.PROPERTY_NAME) {
            Spot keySpot = spot();
            String key = text(keySpot, "The key", parser.currentName());
            Spot first = seen.putIfAbsent(key, keySpot);
            if (first != null) {
                throw at(
                        keySpot,
                        "The key " + Texts.quoted(key) + " is given twice in one object; the first time in "
                                + first.text() + ". Remove one of them.");
            }
            members.add(new Node.Member(key, keySpot, value(next())));
        }
        leave();
        return new Node.ObjectNode(spot, List.copyOf(members));
    }

    private Node.ArrayNode array(Spot spot) {
        enter(spot);
        List<Node> elements = new ArrayList<>();
        for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
            elements.add(value(token));
        }
        leave();
        return new Node.ArrayNode(spot, List.copyOf(elements));
    }

    private Node number(Spot spot) {
        String digits = parser.getString();
        if (parser.isNaN()) {
            return new Node.NotFiniteNode(spot, digits);
        }
        if (digits.length() > LONGEST_NUMBER) {
            throw at(
                    spot,
                    "The number " + digits.substring(0, 20) + "… has " + digits.length() + " characters; at most "
                            + LONGEST_NUMBER + " are read.");
        }
        try {
            BigDecimal number = new BigDecimal(digits);
            long exponent = (long) number.precision() - number.scale();
            if (number.signum() == 0 || Math.abs(exponent) <= GREATEST_EXPONENT) {
                return new Node.NumberNode(spot, number.signum() == 0 ? BigDecimal.ZERO : number);
            }
        } catch (NumberFormatException e) {
            // An exponent beyond the range of a decimal: refused as any other number out of range.
        }
        throw at(spot, "The number " + digits + " is out of range: no quantity here is that great or small.");
    }

    private String text(Spot spot, String what, String value) {
        if (value.length() > Texts.LONGEST) {
            throw at(spot, what + " has " + value.length() + " characters; at most " + Texts.LONGEST + " are read.");
        }
        Texts.fault(value).ifPresent(fault -> {
            throw at(spot, what + " " + Texts.quoted(value) + " " + fault);
        });
        return value;
    }

    private void enter(Spot spot) {
        open.add(spot);
        if (open.size() > DEEPEST) {
            throw at(spot, "Lists and objects are nested more than " + DEEPEST + " deep. No file of this program is.");
        }
    }

    private void leave() {
        open.remove(open.size() - 1);
    }

    private Spot spot() {
        return spot(parser.currentTokenLocation());
    }

    private static Spot spot(TokenStreamLocation location) {
        return new Spot(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    private InputException cutOff(TokenStreamLocation location) {
        String within = open.isEmpty()
                ? ""
                : " in the middle of a list or object that begins in "
                        + open.get(open.size() - 1).text();
        return at(
                spot(location), "The file ends" + within + ". Maybe it was cut off: get it again from where it came.");
    }

    private InputException syntax(JacksonException e) {
        TokenStreamLocation location = e.getLocation();
        if (location == null) {
            return new InputException(name, "The file is not JSON. Check it where it was last changed.");
        }
        int offset = (int) location.getCharOffset();
        if (offset >= 0 && text.substring(Math.min(offset, text.length())).matches("[a-z0-9+.-]*")) {
            return cutOff(location);
        }
        String found = offset >= 0 && offset < text.length()
                ? " The character " + Texts.quoted(text.substring(offset, text.offsetByCodePoints(offset, 1)))
                        + " is not expected here."
                : "";
        return at(
                spot(location),
                "The file is not JSON." + found
                        + " Maybe a comma, a quote or a bracket is missing or too many at or before this place.");
    }

    private InputException at(@Nullable Spot spot, String sentence) {
        return new InputException(spot == null ? name : name + ", " + spot.text(), sentence);
    }
}
