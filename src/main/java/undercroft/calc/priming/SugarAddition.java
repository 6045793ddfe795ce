package undercroft.calc.priming;

import java.util.Objects;
import undercroft.catalogue.Sugar;
import undercroft.quantity.Check;

/**
 * Some of a sugar put into the beer.
 *
 * @param grams mass of the product as weighed, 0 to 1,000,000 g
 */
public record SugarAddition(Sugar sugar, double grams) {
    public SugarAddition {
        Objects.requireNonNull(sugar, "sugar");
        Check.within("grams", grams, 0, 1_000_000, "g");
    }
}
