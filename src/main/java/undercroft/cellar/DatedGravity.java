package undercroft.cellar;

import java.time.LocalDate;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/** A gravity read on a day, before bottling. */
public record DatedGravity(LocalDate day, double specificGravity) {
    public DatedGravity {
        Check.within("specificGravity", specificGravity, 0.980, 1.200, "");
        if (day.getYear() < 1900 || day.getYear() >= 2200) {
            throw new InvalidInput("day", "is not between the years 1900 and 2200; correct the date");
        }
    }
}
