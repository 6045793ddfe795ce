package undercroft.cellar;

import undercroft.catalogue.Listed;

/** The unit a sensor tells its temperature in. */
public enum TemperatureUnit implements Listed {
    CELSIUS("celsius", 1, 0),
    FAHRENHEIT("fahrenheit", 5 / 9.0, -32 * 5 / 9.0),
    KELVIN("kelvin", 1, -273.15);

    private final String id;
    private final double factor;
    private final double offset;

    TemperatureUnit(String id, double factor, double offset) {
        this.id = id;
        this.factor = factor;
        this.offset = offset;
    }

    @Override
    public String id() {
        return id;
    }

    public double celsius(double value) {
        return value * factor + offset;
    }
}
