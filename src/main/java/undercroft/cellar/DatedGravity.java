package undercroft.cellar;

import java.time.LocalDate;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * A gravity read on a day, up to bottling.
 *
 * @param includesPriming true when the priming sugar was in the beer already
 */
public record DatedGravity(LocalDate day, double specificGravity, boolean includesPriming) {
    public DatedGravity {
        Check.within("specificGravity", specificGravity, 0.980, 1.200, "");
        if (day.getYear() < 1900 || day.getYear() >= 2200) {
            throw new InvalidInput("day", "cellar.fault.year");
        }
    }

    /** Read before the sugar went in. */
    public DatedGravity(LocalDate day, double specificGravity) {
        this(day, specificGravity, false);
    }
}
