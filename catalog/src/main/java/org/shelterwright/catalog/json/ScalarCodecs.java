package org.shelterwright.catalog.json;

import java.math.BigDecimal;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.QuarterTurn;

/** Texts, numbers, truth values and lengths in files. */
final class ScalarCodecs {
    static final Codec<String> TEXT = new Codec<>() {
        @Override
        public @Nullable String read(Node node, Trail trail) {
            if (node instanceof Node.TextNode text) {
                return text.text();
            }
            trail.mismatch(node, "a text in quotes");
            return null;
        }

        @Override
        public Node write(String value) {
            Texts.fault(value).ifPresent(fault -> {
                throw new IllegalArgumentException("The text " + Texts.quoted(value) + " " + fault);
            });
            return new Node.TextNode(null, value);
        }
    };

    static final Codec<String> ID = new Codec<>() {
        @Override
        public @Nullable String read(Node node, Trail trail) {
            String id = TEXT.read(node, trail);
            if (id == null || Texts.ID.matcher(id).matches()) {
                return id;
            }
            trail.tell(
                    node.spot(),
                    trail.here()
                            + " must be 1 to 80 letters from a to z, digits, dots, hyphens or underscores, beginning"
                            + " with a letter or digit, but is " + node.shown() + ".");
            return null;
        }

        @Override
        public Node write(String value) {
            return TEXT.write(value);
        }
    };

    static final Codec<Boolean> TRUTH = new Codec<>() {
        @Override
        public @Nullable Boolean read(Node node, Trail trail) {
            if (node instanceof Node.BooleanNode truth) {
                return truth.value();
            }
            trail.mismatch(node, "true or false");
            return null;
        }

        @Override
        public Node write(Boolean value) {
            return new Node.BooleanNode(null, value);
        }

        @Override
        public Boolean whenAbsent() {
            return Boolean.FALSE;
        }
    };

    static final Codec<Double> REAL = number("a number", BigDecimal::doubleValue, BigDecimal::valueOf);
    static final Codec<Integer> WHOLE =
            number("a whole number below 2 147 483 648", BigDecimal::intValueExact, BigDecimal::valueOf);
    static final Codec<Long> LONG = number("a whole number", BigDecimal::longValueExact, BigDecimal::valueOf);

    static final Codec<Integer> LENGTH = new Codec<>() {
        @Override
        public @Nullable Integer read(Node node, Trail trail) {
            try {
                if (node instanceof Node.NumberNode number) {
                    return Lengths.ofMillimetres(number.number());
                }
                if (node instanceof Node.TextNode text) {
                    return Lengths.parse(text.text());
                }
            } catch (IllegalArgumentException e) {
                trail.tell(node.spot(), trail.here() + ": " + e.getMessage());
                return null;
            }
            trail.mismatch(node, "a length in millimetres, such as 1200.5, or with its unit, such as \"19 in\"");
            return null;
        }

        @Override
        public Node write(Integer value) {
            return new Node.NumberNode(null, Lengths.millimetres(value));
        }
    };

    static final Codec<QuarterTurn> TURN = new Codec<>() {
        @Override
        public @Nullable QuarterTurn read(Node node, Trail trail) {
            if (node instanceof Node.NumberNode number) {
                for (QuarterTurn turn : QuarterTurn.values()) {
                    if (number.number().compareTo(BigDecimal.valueOf(turn.degrees())) == 0) {
                        return turn;
                    }
                }
            }
            trail.mismatch(node, "a turn of 0, 90, 180 or 270 (degrees)");
            return null;
        }

        @Override
        public Node write(QuarterTurn value) {
            return new Node.NumberNode(null, BigDecimal.valueOf(value.degrees()));
        }
    };

    private ScalarCodecs() {}

    private static <T> Codec<T> number(String wanted, Function<BigDecimal, T> read, Function<T, BigDecimal> write) {
        return new Codec<>() {
            @Override
            public @Nullable T read(Node node, Trail trail) {
                if (node instanceof Node.NumberNode number) {
                    try {
                        return read.apply(number.number());
                    } catch (ArithmeticException e) {
                        trail.mismatch(node, wanted);
                        return null;
                    }
                }
                trail.mismatch(node, wanted);
                return null;
            }

            @Override
            public Node write(T value) {
                return new Node.NumberNode(null, write.apply(value));
            }
        };
    }
}
