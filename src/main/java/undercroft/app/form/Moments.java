package undercroft.app.form;

import java.time.Instant;
import undercroft.app.Texts;
import undercroft.cellar.Lot;
import undercroft.quantity.InvalidInput;

/** What holds for every moment that is told of bottles. */
final class Moments {
    private Moments() {}

    /** The moment of something that happened to a lot: not before it was filled, not in the future. */
    static Instant happened(Instant at, Lot lot, Instant now) {
        if (at.isBefore(lot.stays().get(0).from())) {
            throw new InvalidInput("at", Texts.of("form.fault.before-capped"));
        }
        if (at.isAfter(now)) {
            throw new InvalidInput("at", Texts.of("form.fault.to-come"));
        }
        return at;
    }
}
