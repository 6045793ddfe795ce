package undercroft.calc.conditioning;

import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/** Something seen on a batch that says how far its carbonation is. */
public sealed interface Observation {
    /** When it was seen. */
    long epochSecond();

    /**
     * A gauge on a capped bottle.
     *
     * @param gaugeBar −1 to 15 bar above the air
     * @param bottle which gauge bottle, counted from 0, below 8; readings of one bottle share its deviations
     * @param instrument which gauge, counted from 0, below 8; readings of one gauge share its error
     * @param celsius temperature of the beer when read, −5 to 60 °C
     */
    record GaugePressure(long epochSecond, double gaugeBar, int bottle, int instrument, double celsius)
            implements Observation {
        public GaugePressure {
            Check.within("gaugeBar", gaugeBar, -1, 15, "bar");
            Check.within("bottle", bottle, 0, MOST_ALIKE - 1);
            Check.within("instrument", instrument, 0, MOST_ALIKE - 1);
            Check.within("celsius", celsius, -5, 60, "°C");
        }

        /** A reading by the only gauge. */
        public GaugePressure(long epochSecond, double gaugeBar, int bottle, double celsius) {
            this(epochSecond, gaugeBar, bottle, 0, celsius);
        }
    }

    /**
     * A thumb on a plastic bottle that was capped with its air squeezed out.
     *
     * @param hand whose, counted from 0, below 8
     */
    record Squeeze(long epochSecond, BottleFeel feel, int hand) implements Observation {
        public Squeeze {
            if (feel == null) {
                throw new InvalidInput("feel", "cellar.fault.no-feel");
            }
            Check.within("hand", hand, 0, MOST_ALIKE - 1);
        }

        /** By the only hand. */
        public Squeeze(long epochSecond, BottleFeel feel) {
            this(epochSecond, feel, 0);
        }
    }

    /**
     * A bottle opened and tasted.
     *
     * @param taster who did, counted from 0, below 8
     */
    record Opened(long epochSecond, PerceivedCarbonation perceivedCarbonation, int taster) implements Observation {
        public Opened {
            if (perceivedCarbonation == null) {
                throw new InvalidInput("liveliness", "cellar.fault.no-liveliness");
            }
            Check.within("taster", taster, 0, MOST_ALIKE - 1);
        }

        /** By the only taster. */
        public Opened(long epochSecond, PerceivedCarbonation perceivedCarbonation) {
            this(epochSecond, perceivedCarbonation, 0);
        }
    }

    /**
     * Apparent gravity of degassed beer against the one on bottling day.
     *
     * @param specificGravity 0.980 to 1.200
     * @param gravityAtBottling 0.980 to 1.200
     * @param sugarWasIn whether the gravity on bottling day was taken after the priming sugar went in
     */
    record ApparentGravity(long epochSecond, double specificGravity, double gravityAtBottling, boolean sugarWasIn)
            implements Observation {
        public ApparentGravity {
            Check.within("specificGravity", specificGravity, 0.980, 1.200, "");
            Check.within("gravityAtBottling", gravityAtBottling, 0.980, 1.200, "");
        }
    }

    /**
     * Bottles of a lot that burst together.
     *
     * @param burst how many, 1 or more
     * @param present how many there were before, not fewer
     * @param flaw what the user holds to be why
     */
    record Bursts(long epochSecond, int burst, int present, Flaw flaw) implements Observation {
        public Bursts {
            Check.within("burst", burst, 1, 10_000);
            Check.within("present", present, burst, 10_000);
        }

        /** The same, of which only that something burst is heard, and not that the others did not. */
        Bursts withoutSurvivors() {
            return new Bursts(epochSecond, burst, burst, flaw);
        }
    }

    /** Why bottles burst, as far as it is known. */
    enum Flaw {
        UNKNOWN,
        /** Those bottles were chipped or worn. */
        CHIPPED,
        /** Too much sugar went in. */
        OVER_PRIMED,
        /** The beer was not finished. */
        UNFINISHED
    }

    /** More bottles, instruments or people than this are not told apart. */
    int MOST_ALIKE = 8;
}
