package undercroft.bottling;

import java.util.Optional;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Phrase;

/**
 * One kind of bottle on the day.
 *
 * @param bottle the make as it is used
 * @param scuffed true for reused or visibly worn ones
 * @param available how many are set out
 * @param filled how many get beer
 * @param refusal why none of them may be filled, empty for bottles that may
 */
public record FillRow(BottleType bottle, boolean scuffed, int available, int filled, Optional<Phrase> refusal) {
    public double filledLitres() {
        return filled * bottle.fillMillilitres() / 1000;
    }

    public int leftEmpty() {
        return available - filled;
    }
}
