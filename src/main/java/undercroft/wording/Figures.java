package undercroft.wording;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.util.Locale;

/** Bare numbers in a language's own signs. */
record Figures(Locale locale) {
    /** From here on digits are grouped: a year or a fill of 1000 mL reads better without. */
    private static final double GROUPED_FROM = 10_000;
    /** A conversion's own rounding error, one part in 10^15, must not tip a limit of 20 psi down to 19. */
    private static final MathContext CONVERTED = new MathContext(12);

    private static final MathContext PLAIN = new MathContext(6);

    /** The value with so many decimals, rounded the given way; never a minus zero. */
    String number(double value, int decimals, RoundingMode rounding) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "\u2013" : value > 0 ? "\u221e" : "\u2212\u221e";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(CONVERTED).setScale(decimals, rounding);
        return written(rounded, decimals, decimals);
    }

    String number(double value, int decimals) {
        return number(value, decimals, RoundingMode.HALF_UP);
    }

    /** At least and at most so many decimals. */
    String number(double value, int least, int most) {
        return written(BigDecimal.valueOf(value).round(CONVERTED).setScale(most, RoundingMode.HALF_UP), least, most);
    }

    /** At most so many decimals, without idle zeros and without grouping: what a field shows. */
    String lean(double value, int decimals) {
        DecimalFormat format = format(0, decimals);
        format.setGroupingUsed(false);
        return format.format(BigDecimal.valueOf(value).round(CONVERTED).setScale(decimals, RoundingMode.HALF_UP));
    }

    /** As it was given: whole numbers in full, others with six digits at most. */
    String plain(double value) {
        if (!Double.isFinite(value)) {
            return number(value, 0);
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal given = value == Math.rint(value) ? exact : exact.round(PLAIN);
        return written(given, 0, 12);
    }

    /** A whole number, digits grouped. */
    String count(long count) {
        return NumberFormat.getIntegerInstance(locale).format(count);
    }

    private String written(BigDecimal value, int least, int most) {
        DecimalFormat format = format(least, most);
        format.setGroupingUsed(Math.abs(value.doubleValue()) >= GROUPED_FROM);
        return format.format(value);
    }

    private DecimalFormat format(int least, int most) {
        DecimalFormat format = (DecimalFormat) NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(least);
        format.setMaximumFractionDigits(most);
        return format;
    }
}
