package undercroft.calc.chill;

import java.util.OptionalDouble;
import undercroft.calc.gas.RealExtract;
import undercroft.catalogue.BottleType;

/**
 * What cold does to one kind of bottle with one beer: where ice begins, and where the swelling passes the headspace and the
 * bottle may burst. Judged as if the bottle came to rest at a temperature; real ones lag, may supercool, and a swing-top or
 * a plastic wall may give way first, none of which is counted on.
 *
 * @param freezingCelsius where ice begins, °C, below 0
 * @param burstingCelsius below it ice and beer want more room than the bottle has; empty where that is not above −40 °C
 */
public record Frost(double freezingCelsius, OptionalDouble burstingCelsius) {
    /** How far it has come, in order of gravity. */
    public enum State {
        /** Warmer than the freezing point. */
        NONE,
        /** Ice forms, and there is room for it still. */
        FREEZING,
        /** Ice and beer want more room than the bottle has. */
        MAY_HAVE_BURST;

        /** The graver of both. */
        public State or(State other) {
            return compareTo(other) >= 0 ? this : other;
        }
    }

    /**
     * The frost limits of a bottle.
     *
     * @param type its fill and brimful are those of the lot
     * @param abvPercent 0 to 20 % by volume
     * @param realExtractGramsPerLitre extract left in the beer, 0 to 200 g/L; {@link RealExtract#USUAL_GRAMS_PER_LITRE} if
     *     unknown
     * @throws IllegalArgumentException outside these ranges
     */
    public static Frost of(BottleType type, double abvPercent, double realExtractGramsPerLitre) {
        double point = Freezing.ofBeerCelsius(abvPercent, realExtractGramsPerLitre);
        double headspace = type.headspaceMillilitres() / type.fillMillilitres();
        return new Frost(
                point,
                Freezing.burstingCelsius(
                        point, Freezing.waterShare(abvPercent, realExtractGramsPerLitre), Math.min(1, headspace)));
    }

    /** What a temperature of the beer, °C, brings it to. */
    public State at(double celsius) {
        if (burstingCelsius.isPresent() && celsius < burstingCelsius.getAsDouble()) {
            return State.MAY_HAVE_BURST;
        }
        return celsius < freezingCelsius ? State.FREEZING : State.NONE;
    }
}
