package undercroft.cellar;

import undercroft.quantity.Check;

/** Priming sugar as weighed: a kind by its id, and grams for the whole priming volume. */
public record SugarDose(String sugarId, double grams) {
    public SugarDose {
        Check.id("sugar", sugarId);
        Check.within("grams", grams, 0, 20_000, "g");
    }
}
