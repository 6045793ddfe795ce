package undercroft.catalogue;

import undercroft.quantity.Interval;

/**
 * Where bottles cool or warm, with what carries the heat and the temperature that is usual there. Fridge means come from
 * household surveys: 4.4 °C (United Kingdom, 2014), 5.2 °C (New Zealand, Gilbert 2007), 6.6 °C (France, Laguerre 2002,
 * International Journal of Refrigeration 25:653); a dial that says 4 °C is no measurement.
 */
public enum CoolingMedium implements Listed {
    STILL_FRIDGE("fridge", Flow.STILL_AIR, 0, 5, true),
    FAN_FRIDGE("fan-fridge", Flow.MOVING_AIR, 15, 5, true),
    FREEZER("freezer", Flow.STILL_AIR, 0, -18, false),
    ICE_WATER("ice-water", Flow.WATER, 90, 0, false),
    ROOM("room", Flow.STILL_AIR, 0, 20, true);

    /** What carries the heat off the bottle's outside. */
    public enum Flow {
        /** Air that only the bottle's own warmth or cold moves, with radiation. */
        STILL_AIR,
        /** Air moved by a fan, with radiation. */
        MOVING_AIR,
        /** Water stirred now and then; the coefficient is that of outside, glass and beer together. */
        WATER
    }

    // A fridge that is opened, bottles that touch the wall, a sensor elsewhere: assumed, and wide enough for the
    // half-litre
    // bottles that home experiments have in a freezer for an hour and in a fridge for ten (amateur measurements).
    private static final Interval AIR_SPREAD = Interval.of(0.9, 1.2, 2.0);
    // The coefficient of water is that of a stirred bucket; left alone, cold water lies still round the bottle
    // (assumed).
    private static final Interval WATER_SPREAD = Interval.of(1, 2, 4);

    private final String id;
    private final Flow flow;
    private final double coefficientWattsPerSquareMetreKelvin;
    private final double usualCelsius;
    private final boolean goodForResting;

    CoolingMedium(
            String id,
            Flow flow,
            double coefficientWattsPerSquareMetreKelvin,
            double usualCelsius,
            boolean goodForResting) {
        this.id = id;
        this.flow = flow;
        this.coefficientWattsPerSquareMetreKelvin = coefficientWattsPerSquareMetreKelvin;
        this.usualCelsius = usualCelsius;
        this.goodForResting = goodForResting;
    }

    @Override
    public String id() {
        return id;
    }

    public Flow flow() {
        return flow;
    }

    /** Moving air: of the outside alone; water: overall; still air: 0, it follows from the temperatures. Assumed. */
    public double coefficientWattsPerSquareMetreKelvin() {
        return coefficientWattsPerSquareMetreKelvin;
    }

    /** By what factors real cooling takes longer than the calculation: 5, 50, 95 %. */
    public Interval timeSpread() {
        return flow == Flow.WATER ? WATER_SPREAD : AIR_SPREAD;
    }

    /** What such a place has when nobody has measured it. */
    public double usualCelsius() {
        return usualCelsius;
    }

    /** False for a freezer and for ice water, where bottles stay only as long as they need to get cold. */
    public boolean isGoodForResting() {
        return goodForResting;
    }
}
