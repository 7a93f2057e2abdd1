package org.shelterwright.catalog.piece;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * That a piece is dangerous goods.
 *
 * @param hazardClass class or division of the United Nations model regulations, such as "3" or "5.1"
 * @param number UN number, such as "UN 1170"; {@code null} if not stated
 * @param apartFrom classes that must not lie beside it
 */
public record DangerousGoods(String hazardClass, @Nullable String number, Set<String> apartFrom) {
    private static final Pattern CLASS = Pattern.compile("[1-9](\\.[1-6])?");

    public DangerousGoods {
        require(hazardClass);
        apartFrom.forEach(DangerousGoods::require);
        apartFrom = Collections.unmodifiableSet(new TreeSet<>(apartFrom));
    }

    /** Whether one of the two must not lie beside the other. */
    public boolean apart(DangerousGoods other) {
        return apartFrom.contains(other.hazardClass) || other.apartFrom.contains(hazardClass);
    }

    private static void require(String text) {
        if (!CLASS.matcher(text).matches()) {
            throw new IllegalArgumentException(
                    "The hazard class \"" + text + "\" must be a class such as 3 or a division such as 5.1.");
        }
    }
}
