package undercroft.catalogue;

/**
 * What pressure a bottle is trusted with over a year, bar gauge at its warmest. Derived for this tool: the lowest graded
 * new beer bottle holds 12 bar for a minute, sparkling-wine bottles 16; glass under load for a year keeps 0.44 of that
 * (strength falls with time to the power 1/16), and 0.7 of that again when reused and scuffed, rounded down. Capped by the
 * carbonation pressure British Glass TEC 7 allows for soft-drink glass, 4.7 bar (5.3 bar for small refillables). Plastic
 * creeps instead, and is trusted up to 30 °C only; a creased one keeps 0.7 of it as well (assumed). No maker's promise.
 */
public enum BottleClass implements Listed {
    NOT_FOR_PRESSURE("not-for-pressure", 0.3, 0.5, 1.6, "no pressure rating exists"),
    REUSED("reused", 2.5, 3.5, 8.4, "12 bar × 0.44 × 0.7"),
    STANDARD("standard", 3.5, 4.7, 12, "12 bar × 0.44, capped at 4.7 (TEC 7)"),
    REFILLABLE("refillable", 4, 5, 14, "14 bar × 0.44, capped at 5.0"),
    SPARKLING("sparkling", 6, 7, 16, "16 bar × 0.44"),
    SPARKLING_REUSED("sparkling-reused", 4.2, 4.9, 11.2, "16 bar × 0.44 × 0.7"),
    PET("pet", 4, 5.5, 12, "ruptures near 12 bar; half kept for creep and warmth"),
    PET_WORN("pet-worn", 2.8, 3.8, 8.4, "12 bar × 0.7, half kept for creep and warmth");

    private static final double PLASTIC_WARMEST_CELSIUS = 30;

    private final String id;
    private final double cautionBar;
    private final double workingPressureBar;
    private final double minuteStrengthBar;
    private final String basis;

    BottleClass(String id, double cautionBar, double workingPressureBar, double minuteStrengthBar, String basis) {
        this.id = id;
        this.cautionBar = cautionBar;
        this.workingPressureBar = workingPressureBar;
        this.minuteStrengthBar = minuteStrengthBar;
        this.basis = basis;
    }

    @Override
    public String id() {
        return id;
    }
    /** From here on worth watching, bar gauge. */
    public double cautionBar() {
        return cautionBar;
    }

    /** Never to be exceeded, bar gauge. */
    public double workingPressureBar() {
        return workingPressureBar;
    }

    /** Pressure held for 60 s that the class is taken to stand, bar gauge. */
    public double minuteStrengthBar() {
        return minuteStrengthBar;
    }

    /** Warmest storage the class is trusted at, °C, whatever the pressure; +∞ for glass. */
    public double warmestCelsius() {
        return isPlastic() ? PLASTIC_WARMEST_CELSIUS : Double.POSITIVE_INFINITY;
    }

    /** True for plastic, which creeps under load; glass weakens with time instead. */
    public boolean isPlastic() {
        return this == PET || this == PET_WORN;
    }

    /** True for sparkling-wine bottles, worn ones too. */
    public boolean isSparkling() {
        return this == SPARKLING || this == SPARKLING_REUSED;
    }

    /** The class of the same bottle once it is worn: scuffed, creased or used again and again. */
    public BottleClass worn() {
        return switch (this) {
            case STANDARD, REFILLABLE, REUSED -> REUSED;
            case SPARKLING, SPARKLING_REUSED -> SPARKLING_REUSED;
            case PET, PET_WORN -> PET_WORN;
            case NOT_FOR_PRESSURE -> NOT_FOR_PRESSURE;
        };
    }

    /** How the limit was derived, for a person. */
    public String basis() {
        return basis;
    }
}
