package org.shelterwright.catalog.json;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A JSON value that remembers where it stood; what was not read from a file has no spot. */
sealed interface Node {
    @Nullable
    Spot spot();

    /** What it is, for messages, such as {@code "rak"} in quotes or {@code a list}. */
    String shown();

    /** One key of an object with its value. */
    record Member(String key, @Nullable Spot spot, Node value) {}

    /** An object; its keys are unique and in the order of the file. */
    record ObjectNode(@Nullable Spot spot, List<Member> members) implements Node {
        Optional<Node> get(String key) {
            return members.stream()
                    .filter(member -> member.key().equals(key))
                    .map(Member::value)
                    .findFirst();
        }

        /** The same object with a key set: in its old place, or at the end. */
        ObjectNode with(String key, Node value) {
            List<Member> changed = new ArrayList<>();
            boolean found = false;
            for (Member member : members) {
                boolean same = member.key().equals(key);
                changed.add(same ? new Member(key, member.spot(), value) : member);
                found |= same;
            }
            if (!found) {
                changed.add(new Member(key, spot, value));
            }
            return new ObjectNode(spot, List.copyOf(changed));
        }

        ObjectNode without(String key) {
            return new ObjectNode(
                    spot,
                    members.stream().filter(member -> !member.key().equals(key)).toList());
        }

        @Override
        public String shown() {
            return "an object";
        }
    }

    /** A list. */
    record ArrayNode(@Nullable Spot spot, List<Node> elements) implements Node {
        @Override
        public String shown() {
            return "a list";
        }
    }

    /** A text. */
    record TextNode(@Nullable Spot spot, String text) implements Node {
        @Override
        public String shown() {
            return Texts.quoted(text);
        }
    }

    /** A finite number, exact. */
    record NumberNode(@Nullable Spot spot, BigDecimal number) implements Node {
        @Override
        public String shown() {
            return number.toString();
        }
    }

    /** A number that is not finite: NaN or an infinity. It is read only to be refused at its place. */
    record NotFiniteNode(@Nullable Spot spot, String token) implements Node {
        @Override
        public String shown() {
            return token;
        }
    }

    /** A truth value. */
    record BooleanNode(@Nullable Spot spot, boolean value) implements Node {
        @Override
        public String shown() {
            return Boolean.toString(value);
        }
    }

    /** The value {@code null}. */
    record NullNode(@Nullable Spot spot) implements Node {
        @Override
        public String shown() {
            return "null";
        }
    }
}
