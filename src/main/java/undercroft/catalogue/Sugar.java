package undercroft.catalogue;

import undercroft.quantity.Check;
import undercroft.quantity.Interval;

/**
 * Something that yeast turns into carbon dioxide.
 *
 * @param yield grams of CO2 from one gram of the product when everything fermentable is fermented, by stoichiometry from
 *     its composition: low, mid, high
 * @param basis composition and its source
 * @param advice what the user should know: the key of a sentence, or what a user wrote; or empty
 */
public record Sugar(String id, String label, Interval yield, String basis, String advice) implements Listed {
    public Sugar {
        Check.id("id", id);
        label = Check.text("name", label);
        Check.within("gramsCarbonDioxidePerGram", yield.low(), 0.01, 0.53, "g/g");
        Check.within("gramsCarbonDioxidePerGram", yield.high(), 0.01, 0.53, "g/g");
    }
}
