package undercroft.outlook.lot;

import undercroft.calc.conditioning.ReadingsVerdict.Agreement;
import undercroft.calc.gas.PressureLimits;
import undercroft.quantity.Interval;

/** When a figure wants attention. */
final class Alerts {
    /** Rooms get this warm in a hot week almost anywhere; a heat limit below it is worth watching (assumption). */
    private static final double HOT_WEEK_CELSIUS = 30;

    private static final double NOTICED = 1;
    private static final double POSSIBLE = 0.25;

    private Alerts() {}

    /**
     * Act when the strongest bottle may be over its limit now or an average one within the weeks ahead, or when the glass
     * has borne what its class stands for a minute; watch from the caution pressure on and below a heat limit of 30 °C.
     */
    static Alert ofPressure(
            Interval strongest,
            Interval peakAhead,
            boolean worn,
            double heatLimitCelsius,
            PressureLimits limits,
            boolean anyLeft) {
        if (!anyLeft) {
            return Alert.CLEAR;
        }
        if (strongest.high() > limits.workingPressureBar() || peakAhead.high() > limits.workingPressureBar() || worn) {
            return Alert.ACT;
        }
        if (strongest.median() > limits.cautionBar() || heatLimitCelsius < HOT_WEEK_CELSIUS) {
            return Alert.WATCH;
        }
        return Alert.CLEAR;
    }

    /** Act while there is still something to save and a taste of light is days away; watch once it may be there. */
    static Alert ofLight(double dose, double perDay) {
        if (dose < NOTICED && perDay > 0 && (NOTICED - dose) / perDay <= 3) {
            return Alert.ACT;
        }
        return dose >= POSSIBLE || perDay > POSSIBLE / 30 ? Alert.WATCH : Alert.CLEAR;
    }

    /** Act on gas that the sugar cannot explain; watch readings that do not fit. */
    static Alert ofReadings(Agreement readings) {
        return switch (readings) {
            case NEEDS_EXTRA_EXTRACT -> Alert.ACT;
            case DISAGREES -> Alert.WATCH;
            case AGREES, NO_READINGS -> Alert.CLEAR;
        };
    }

    /** Watch yeast that does not get on. */
    static Alert ofProgress(LotOutlook.Progress progress) {
        return switch (progress) {
            case STALLED, TOO_HOT, SLOW -> Alert.WATCH;
            case WORKING, DONE -> Alert.CLEAR;
        };
    }
}
