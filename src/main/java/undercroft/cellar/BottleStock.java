package undercroft.cellar;

import undercroft.catalogue.GlassColour;
import undercroft.quantity.Check;

/**
 * Empty bottles set out for a batch.
 *
 * @param scuffed true for reused or visibly worn bottles, which are trusted with less
 * @param available how many there are
 */
public record BottleStock(String bottleTypeId, GlassColour colour, boolean scuffed, int available) {
    public BottleStock {
        Check.id("bottle", bottleTypeId);
        Check.within("available", available, 0, 10_000);
    }
}
