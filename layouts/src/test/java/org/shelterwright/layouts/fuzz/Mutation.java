package org.shelterwright.layouts.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Spoils JSON texts in the ways in which files get spoiled, and in those in which an attacker would. */
final class Mutation {
    private static final Pattern VALUE = Pattern.compile("-?\\d+(?:\\.\\d+)?|\"[^\"\\n]*\"(?!:)|true|false");
    private static final Pattern DIGIT = Pattern.compile("\\d");
    private static final Pattern KEY = Pattern.compile("\"[A-Za-z0-9]+\"(?=:)");
    private static final List<String> NASTY = List.of(
            "null",
            "true",
            "{}",
            "[]",
            "[[]]",
            "{\"a\": 1}",
            "0",
            "-0",
            "-1",
            "0.0005",
            "0.00049",
            "1e999",
            "1e-999",
            "1e29",
            "-1e29",
            "1e999999999",
            "1e99999999999",
            "NaN",
            "-Infinity",
            "500000",
            "499999.999",
            "-500000",
            "2147483647",
            "2147483648",
            "9223372036854775807",
            "9223372036854775808",
            "\"\"",
            "\"\\u0000\"",
            "\"\\ud83d\"",
            "\"\uD83D\uDE9A\"",
            "\"../../etc/passwd\"",
            "\"19 in\"",
            "\"1e5 m\"",
            "\"=1+1\"",
            "\"floor\"",
            "\"front\"",
            "\"rack-1\"",
            "\"body/panel 1\"",
            "\"@type\"",
            "/* x */ 1",
            "'a'",
            "[0, 0, 0]",
            "[1e9, 1, 1]",
            "{\"from\": [0, 0, 0], \"to\": [1, 1, 1]}");

    private Mutation() {}

    static byte[] of(String text, Random random) {
        String spoiled = text;
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count && !spoiled.isEmpty(); i++) {
            spoiled = once(spoiled, random);
        }
        byte[] bytes = spoiled.getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(8) == 0 && bytes.length > 0) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    private static String once(String text, Random random) {
        int at = random.nextInt(text.length());
        int end = Math.min(text.length(), at + 1 + random.nextInt(200));
        return switch (random.nextInt(14)) {
            case 0 -> text.substring(0, at);
            case 1 -> text.substring(0, at) + text.substring(end);
            case 2 -> text.substring(0, end) + text.substring(at);
            case 3 -> text.substring(0, at) + (char) (32 + random.nextInt(95)) + text.substring(at + 1);
            case 4 -> replaced(text, KEY, "\"" + (char) ('a' + random.nextInt(26)) + "\"", random);
            case 5 -> replaced(text, VALUE, nested(random), random);
            case 6 -> replaced(text, VALUE, longOne(random), random);
            case 7, 8, 9, 10 -> replaced(text, DIGIT, String.valueOf(random.nextInt(10)), random);
            default -> replaced(text, VALUE, NASTY.get(random.nextInt(NASTY.size())), random);
        };
    }

    private static String replaced(String text, Pattern pattern, String by, Random random) {
        List<MatchResult> found = pattern.matcher(text).results().toList();
        if (found.isEmpty()) {
            return text;
        }
        MatchResult match = found.get(random.nextInt(found.size()));
        return text.substring(0, match.start()) + by + text.substring(match.end());
    }

    private static String nested(Random random) {
        int depth = 1 + random.nextInt(200);
        return random.nextBoolean()
                ? "[".repeat(depth) + "]".repeat(depth)
                : "{\"a\": ".repeat(depth) + "1" + "}".repeat(depth);
    }

    private static String longOne(Random random) {
        int length = 1 + random.nextInt(20_000);
        return random.nextBoolean() ? "9".repeat(length) : "\"" + "x".repeat(length) + "\"";
    }
}
