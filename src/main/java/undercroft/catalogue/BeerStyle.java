package undercroft.catalogue;

import undercroft.quantity.Interval;

/**
 * Broad kinds of beer with what is usual for each. Keeping days at 20 °C, target carbonation (volumes) and serving
 * temperature (°C): common practice, no source.
 */
public enum BeerStyle implements Listed {
    PALE_LAGER("pale-lager", Interval.of(90, 120, 180), Interval.of(2.4, 2.6, 2.8), Interval.of(5, 6.5, 8)),
    WHEAT("wheat", Interval.of(90, 120, 180), Interval.of(2.8, 3.3, 3.8), Interval.of(6, 7.5, 9)),
    HOPPY_PALE("hoppy-pale", Interval.of(60, 75, 90), Interval.of(2.2, 2.4, 2.7), Interval.of(8, 10, 12)),
    PALE_ALE("pale-ale", Interval.of(120, 150, 180), Interval.of(1.8, 2.2, 2.5), Interval.of(8, 11, 13)),
    AMBER_BROWN("amber-brown", Interval.of(120, 150, 180), Interval.of(1.9, 2.3, 2.6), Interval.of(9, 11, 13)),
    PORTER_STOUT("porter-stout", Interval.of(150, 210, 300), Interval.of(1.8, 2.2, 2.5), Interval.of(9, 11, 13)),
    SAISON_TRIPEL("saison-tripel", Interval.of(180, 365, 540), Interval.of(2.6, 3.2, 3.8), Interval.of(7, 9, 11)),
    STRONG_DARK("strong-dark", Interval.of(365, 730, 1095), Interval.of(1.9, 2.3, 2.8), Interval.of(12, 13.5, 15)),
    SOUR_FRUIT("sour-fruit", Interval.of(180, 365, 730), Interval.of(2.4, 3.0, 3.6), Interval.of(6, 8, 10));

    private final String id;
    private final Interval keepingDaysAt20Celsius;
    private final Interval targetVolumes;
    private final Interval servingCelsius;

    BeerStyle(String id, Interval keepingDaysAt20Celsius, Interval targetVolumes, Interval servingCelsius) {
        this.id = id;
        this.keepingDaysAt20Celsius = keepingDaysAt20Celsius;
        this.targetVolumes = targetVolumes;
        this.servingCelsius = servingCelsius;
    }

    @Override
    public String id() {
        return id;
    }

    public Interval keepingDaysAt20Celsius() {
        return keepingDaysAt20Celsius;
    }

    public Interval targetVolumes() {
        return targetVolumes;
    }

    public Interval servingCelsius() {
        return servingCelsius;
    }
}
