package org.shelterwright.app.cli.terminal;

import java.text.Normalizer;
import java.util.Map;

/** Says in ASCII what a terminal without UTF-8 cannot show. */
final class PlainText {
    private static final Map<Integer, String> SIGNS = Map.ofEntries(
            Map.entry((int) '°', "deg"),
            Map.entry((int) 'µ', "u"),
            Map.entry((int) 'μ', "u"),
            Map.entry((int) '²', "2"),
            Map.entry((int) '³', "3"),
            Map.entry((int) '·', "*"),
            Map.entry((int) '×', "x"),
            Map.entry((int) '±', "+/-"),
            Map.entry((int) '≤', "<="),
            Map.entry((int) '≥', ">="),
            Map.entry((int) '−', "-"),
            Map.entry((int) '–', "-"),
            Map.entry((int) '—', "-"),
            Map.entry((int) '…', "..."),
            Map.entry((int) '„', "\""),
            Map.entry((int) '“', "\""),
            Map.entry((int) '”', "\""),
            Map.entry((int) '’', "'"),
            Map.entry((int) 'ß', "ss"),
            Map.entry((int) 'æ', "ae"),
            Map.entry((int) 'ø', "o"),
            Map.entry((int) '\u00a0', " "),
            Map.entry((int) '\u2009', " "),
            Map.entry((int) '\u202f', " "));

    private PlainText() {}

    /** The text with every character above ASCII replaced: by its like, its base letter, or a question mark. */
    static String of(String text) {
        if (text.chars().allMatch(c -> c < 128)) {
            return text;
        }
        StringBuilder plain = new StringBuilder();
        text.codePoints().forEach(c -> plain.append(one(c)));
        return plain.toString();
    }

    private static String one(int c) {
        if (c < 128) {
            return Character.toString(c);
        }
        String sign = SIGNS.get(c);
        if (sign != null) {
            return sign;
        }
        String base = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFD)
                .codePoints()
                .filter(part -> part < 128)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return base.isEmpty() ? "?" : base;
    }
}
