package undercroft.wording;

import java.time.ZoneOffset;
import undercroft.outlook.CellarOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.quantity.UnitSystem;

/** What a phrase says, for tests that look for its words. */
public final class English {
    private English() {}

    public static QuantityFormat in(UnitSystem units) {
        return QuantityFormat.of(Messages.english(), units, ZoneOffset.UTC);
    }

    public static String of(Phrase phrase) {
        return in(UnitSystem.METRIC).of(phrase);
    }

    public static ShelfWords of(CellarOutlook outlook) {
        return ShelfWords.of(outlook, Messages.english());
    }

    /** What is wrong and what to do. */
    public static String of(InvalidInput fault) {
        return of(fault.phrase());
    }

    /** Where it stands, what is wrong and what to do. */
    public static String placed(InvalidInput fault) {
        return Messages.english().fault(fault);
    }
}
