package org.shelterwright.app.desk.hand;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.shelterwright.catalog.space.Lengths;

/** The unit in which lengths are shown, and which a typed number without a unit has. */
public enum LengthUnit {
    MILLIMETRE("mm", Lengths.MM),
    INCH("in", Lengths.INCH);

    /** Decimals of an inch that tell every micrometre apart. */
    private static final int FINEST = 5;

    private final String sign;
    private final int micrometres;

    LengthUnit(String sign, int micrometres) {
        this.sign = sign;
        this.micrometres = micrometres;
    }

    public String sign() {
        return sign;
    }

    /**
     * Writes a length without its unit and without needless zeros, such as "44.45". Millimetres are always exact. A
     * length that inches cannot write exactly has five decimals, which lead back to the same micrometre.
     */
    public String format(int length) {
        return number(length).toPlainString().replace('-', '\u2212');
    }

    /** Writes a length with its unit. */
    public String withSign(int length) {
        return format(length) + "\u00a0" + sign;
    }

    private BigDecimal number(int length) {
        BigDecimal number = BigDecimal.valueOf(length)
                .divide(BigDecimal.valueOf(micrometres), FINEST, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0, RoundingMode.UNNECESSARY) : number;
    }
}
