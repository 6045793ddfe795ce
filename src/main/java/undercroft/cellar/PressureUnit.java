package undercroft.cellar;

import undercroft.catalogue.Listed;

/** The unit a sensor tells its pressure in. */
public enum PressureUnit implements Listed {
    BAR("bar", 1),
    /** Pound-force per square inch: 6.894757 kPa (NIST SP 811, 2008, B.8). */
    PSI("psi", 0.06894757),
    KILOPASCAL("kilopascal", 0.01),
    MILLIBAR("millibar", 0.001);

    private final String id;
    private final double factor;

    PressureUnit(String id, double factor) {
        this.id = id;
        this.factor = factor;
    }

    @Override
    public String id() {
        return id;
    }

    public double bar(double value) {
        return value * factor;
    }
}
