package undercroft.cellar;

import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.FillingMethod;
import undercroft.quantity.Check;

/**
 * How the beer went into its bottles, and what is written on their crates.
 *
 * @param beerCelsiusAtCapping the beer's own temperature when it was capped, if it was read: it, not the room's, sets
 *     what the bottle holds of air and how far the beer expands later
 * @param keggedLitres the part of the batch that went to a keg; 0 for none
 * @param label the newest label, if any was made
 */
public record Packaging(
        FillingMethod method, OptionalDouble beerCelsiusAtCapping, double keggedLitres, Optional<PrintedLabel> label) {
    public Packaging {
        if (beerCelsiusAtCapping.isPresent()) {
            Check.within("beerCelsiusAtCapping", beerCelsiusAtCapping.getAsDouble(), -2, 45, "°C");
        }
        Check.within("keggedLitres", keggedLitres, 0, 2_000, "L");
    }

    /** All of it bottled, at a temperature nobody read, and no label made. */
    public static Packaging of(FillingMethod method) {
        return new Packaging(method, OptionalDouble.empty(), 0, Optional.empty());
    }

    public Packaging withMethod(FillingMethod changed) {
        return new Packaging(changed, beerCelsiusAtCapping, keggedLitres, label);
    }

    public Packaging withKegged(double litres) {
        return new Packaging(method, beerCelsiusAtCapping, litres, label);
    }

    public Packaging withLabel(PrintedLabel made) {
        return new Packaging(method, beerCelsiusAtCapping, keggedLitres, Optional.of(made));
    }
}
