package undercroft.bottling;

import java.util.List;
import java.util.Locale;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;

/**
 * Water with a product in it.
 *
 * @param name what it is, for a person
 * @param litres of water
 * @param productAmount product in it, in {@code productUnit}; 0 for plain water
 * @param productUnit mL or g
 * @param fromLabel true when the rate is the user's, from the label
 * @param minutes how long everything stays in contact
 * @param rinse whether it has to be rinsed off
 * @param basis where the rate comes from, for a person
 * @param cautions as sentences
 */
public record Solution(
        String name,
        double litres,
        double productAmount,
        String productUnit,
        boolean fromLabel,
        int minutes,
        boolean rinse,
        String basis,
        List<String> cautions) {
    private static final double MILLILITRES_PER_FLUID_OUNCE =
            Volume.ofUsFluidOunces(1).millilitres();

    public Solution {
        cautions = List.copyOf(cautions);
    }

    /** One line for a person: {@code 10 mL of iodophor in 6.5 L of water, 2 minutes, drain}. */
    public String words(UnitSystem units) {
        String water = Volume.ofLitres(litres).text(units) + " of water";
        String contact = minutes == 0 ? "" : ", " + minutes + " minutes";
        String after = rinse ? ", then rinse" : ", then drain";
        if (productAmount == 0) {
            return name + ": " + water + contact + after;
        }
        String ounces = units == UnitSystem.US && productUnit.equals("mL")
                ? String.format(Locale.ROOT, " (%.2f fl oz)", productAmount / MILLILITRES_PER_FLUID_OUNCE)
                : "";
        return String.format(Locale.ROOT, "%.0f %s", productAmount, productUnit) + ounces + " of " + name + " in "
                + water + contact + after;
    }
}
