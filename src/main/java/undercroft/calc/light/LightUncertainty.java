package undercroft.calc.light;

import undercroft.catalogue.GlassColour;

/**
 * By what factor a dose may be off either way, as a 5 to 95 % span. The parts are independent and multiply, so their logs are
 * added in quadrature.
 */
public final class LightUncertainty {
    /** Calibration on handbook statements: 11 s to 3 min of sun in clear glass (assumption). */
    public static final double CALIBRATION = 4;

    /** The spectrum of brown walls, constructed to a standard's limit. */
    public static final double BROWN_WALL = 2;

    /** An illuminance nobody measured. */
    public static final double GUESSED_LUX = 2.5;

    /** What the factor rests on, for a person. */
    public static final String BASIS =
            "factor 4 either way: handbook statements of how long clear bottles stand the sun, from"
                    + " ten seconds to a few minutes (The Practical Brewer, 1946 and 1977); twice as wide for brown glass, whose spectrum"
                    + " was made up to meet a standard's limit, and 2.5 times for light that nobody measured; all assumed";

    private LightUncertainty() {}

    /**
     * Combined factor, 4 and up.
     *
     * @param guessedShare share of the dose that rests on a guessed illuminance, 0 to 1; guesses of one person are taken to
     *     err together
     */
    public static double factor(GlassColour colour, double guessedShare) {
        if (!(guessedShare >= 0 && guessedShare <= 1)) {
            throw new IllegalArgumentException("guessed share " + guessedShare);
        }
        boolean brown = colour == GlassColour.AMBER || colour == GlassColour.PET_AMBER;
        double calibration = Math.log(CALIBRATION);
        double wall = brown ? Math.log(BROWN_WALL) : 0;
        double lux = Math.log(GUESSED_LUX) * guessedShare;
        return Math.exp(Math.sqrt(calibration * calibration + wall * wall + lux * lux));
    }
}
