package undercroft.calc.gas;

/** Refuses arguments outside the range of a model; a fault of the caller, not of a person. */
final class Require {
    /** Coldest and warmest beer the package answers for, °C. */
    static final double COLDEST_CELSIUS = -5;

    static final double WARMEST_CELSIUS = 60;

    private Require() {}

    static double within(String what, double value, double min, double max) {
        if (!(value >= min && value <= max)) {
            throw new IllegalArgumentException(what + " is " + value + ", outside " + min + " to " + max);
        }
        return value;
    }

    static double celsius(double celsius) {
        return within("celsius", celsius, COLDEST_CELSIUS, WARMEST_CELSIUS);
    }
}
