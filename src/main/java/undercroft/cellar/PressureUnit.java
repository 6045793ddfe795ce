package undercroft.cellar;

import undercroft.catalogue.Listed;

/** The unit a sensor tells its pressure in. */
public enum PressureUnit implements Listed {
    BAR("bar", "bar", 1),
    /** Pound-force per square inch: 6.894757 kPa (NIST SP 811, 2008, B.8). */
    PSI("psi", "psi", 0.06894757),
    KILOPASCAL("kilopascal", "kPa", 0.01),
    MILLIBAR("millibar", "mbar", 0.001);

    private final String id;
    private final String label;
    private final double factor;

    PressureUnit(String id, String label, double factor) {
        this.id = id;
        this.label = label;
        this.factor = factor;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }

    public double bar(double value) {
        return value * factor;
    }
}
