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
     * @param celsius temperature of the beer when read, −5 to 60 °C
     */
    record GaugePressure(long epochSecond, double gaugeBar, int bottle, double celsius) implements Observation {
        public GaugePressure {
            Check.within("gaugeBar", gaugeBar, -1, 15, "bar");
            Check.within("bottle", bottle, 0, MOST_GAUGE_BOTTLES - 1);
            Check.within("celsius", celsius, -5, 60, "°C");
        }
    }

    /** A thumb on a plastic bottle that was capped with its air squeezed out. */
    record Squeeze(long epochSecond, BottleFeel feel) implements Observation {
        public Squeeze {
            if (feel == null) {
                throw new InvalidInput("feel", "cellar.fault.no-feel");
            }
        }
    }

    /** A bottle opened and tasted. */
    record Opened(long epochSecond, PerceivedCarbonation perceivedCarbonation) implements Observation {
        public Opened {
            if (perceivedCarbonation == null) {
                throw new InvalidInput("liveliness", "cellar.fault.no-liveliness");
            }
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

    /** More gauge bottles than this are not told apart. */
    int MOST_GAUGE_BOTTLES = 8;
}
