package undercroft.bottling;

import java.util.List;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sanitiser;
import undercroft.quantity.Mass;
import undercroft.quantity.Phrase;
import undercroft.quantity.Volume;

/**
 * Water with a product in it.
 *
 * @param product what it is
 * @param litres of water
 * @param productAmount product in it, mL or g; 0 for plain water, and where only the label tells
 * @param liquid true for mL, false for g
 * @param fromLabel true when the rate is the user's, from the label
 * @param minutes how long everything stays in contact
 * @param rinse whether it has to be rinsed off
 * @param basis where the rate comes from, for a person
 * @param cautions what could hurt someone
 */
public record Solution(
        Listed product,
        double litres,
        double productAmount,
        boolean liquid,
        boolean fromLabel,
        int minutes,
        boolean rinse,
        String basis,
        List<Phrase> cautions) {
    /** Said with every amount of a product. */
    static final Phrase LABEL_WINS = Phrase.of("bottling.wash.label-wins");

    public Solution {
        cautions = List.copyOf(cautions);
    }

    /** One line: {@code 10 mL (0.34 fl oz) of iodophor in 6.5 L of water, 2 minutes, then drain}. */
    public Phrase words() {
        Phrase after = Phrase.of(rinse ? "bottling.wash.rinse" : "bottling.wash.drain");
        Volume water = Volume.ofLitres(litres);
        if (productAmount > 0) {
            return Phrase.of("bottling.wash.line", amount(), product, water, minutes, after);
        }
        boolean plain = product == Sanitiser.HEAT || product == Cleaner.HOT_WATER;
        return Phrase.of(plain ? "bottling.wash.plain" : "bottling.wash.as-label", product, water, minutes, after);
    }

    /** Spoons, cylinders and scales have either unit, so both are told. */
    private Phrase amount() {
        return liquid
                ? Phrase.of(
                        "bottling.wash.millilitres",
                        productAmount,
                        Volume.ofMillilitres(productAmount).usFluidOunces())
                : Phrase.of("bottling.wash.grams", Mass.ofGrams(productAmount));
    }
}
