package undercroft.app.start;

import java.util.Locale;
import undercroft.wording.Messages;

/**
 * The usual places, each with a first guess of its air over the year, °C (worked out for this project, unpublished: a guess
 * to be overwritten, kept wide). The fridge's is common practice, no source.
 */
public enum Spot {
    CUPBOARD(19, 15, 25),
    PANTRY(16, 11, 22),
    CELLAR(13, 8, 18),
    SHED(12, 0, 28),
    LOFT(17, 3, 35),
    FRIDGE(5, 3, 8),
    OTHER(18, 12, 26);

    private final double usual;
    private final double coldest;
    private final double warmest;

    Spot(double usual, double coldest, double warmest) {
        this.usual = usual;
        this.coldest = coldest;
        this.warmest = warmest;
    }

    public double usualCelsius() {
        return usual;
    }

    public double coldestCelsius() {
        return coldest;
    }

    public double warmestCelsius() {
        return warmest;
    }

    /** Its name on the page. */
    public String words(Messages messages) {
        return messages.of("start.spot." + name().toLowerCase(Locale.ROOT));
    }
}
