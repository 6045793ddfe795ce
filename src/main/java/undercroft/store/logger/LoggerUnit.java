package undercroft.store.logger;

/** The unit a logger writes. */
public enum LoggerUnit {
    CELSIUS("°C"),
    FAHRENHEIT("°F"),
    KELVIN("K");

    private final String symbol;

    LoggerUnit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }

    /**
     * In °C. Converted values are rounded to 0.0001 K, so that a value written out and read again is the same value; no
     * logger resolves that much.
     */
    public double toCelsius(double value) {
        return switch (this) {
            case CELSIUS -> value;
            case FAHRENHEIT -> rounded((value - 32) / 1.8);
            case KELVIN -> rounded(value - 273.15);
        };
    }

    private static double rounded(double celsius) {
        return Math.rint(celsius * 10_000) / 10_000;
    }
}
