package undercroft.cellar;

import undercroft.catalogue.Listed;

/** The unit a sensor tells its temperature in. */
public enum TemperatureUnit implements Listed {
    CELSIUS("celsius", "°C", 1, 0),
    FAHRENHEIT("fahrenheit", "°F", 5 / 9.0, -32 * 5 / 9.0),
    KELVIN("kelvin", "K", 1, -273.15);

    private final String id;
    private final String label;
    private final double factor;
    private final double offset;

    TemperatureUnit(String id, String label, double factor, double offset) {
        this.id = id;
        this.label = label;
        this.factor = factor;
        this.offset = offset;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }

    public double celsius(double value) {
        return value * factor + offset;
    }
}
