package undercroft.calc.priming;

import java.time.LocalDate;
import java.util.Objects;
import undercroft.quantity.Gravity;

/** A gravity read on a day. */
public record GravityReading(LocalDate day, Gravity gravity) {
    public GravityReading {
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(gravity, "gravity");
    }
}
