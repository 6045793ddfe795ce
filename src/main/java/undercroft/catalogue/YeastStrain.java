package undercroft.catalogue;

/**
 * Kinds of yeast by their cardinal temperatures (°C) and the strength (% ABV) at which they stop. Ale: Salvadó et al.
 * 2011 (Appl. Environ. Microbiol. 77:2292), lowered for ethanol by assumption; lager minimum fitted to the glucose uptake
 * rates of Gee and Ramirez 1994 (J. Inst. Brew. 100:321); the other two rows are assumptions within the same literature.
 */
public enum YeastStrain implements Listed {
    ALE("ale", 4, 31, 40, 14, 33),
    LAGER("lager", -3, 27, 34, 13, 28),
    SPARKLING_WINE("sparkling-wine", 2.5, 30, 41, 17.5, 33),
    WARM_FARMHOUSE("warm-farmhouse", 7, 36, 43, 15, 38);

    private final String id;
    private final double minimumCelsius;
    private final double optimumCelsius;
    private final double maximumCelsius;
    private final double alcoholLimitPercent;
    private final double tooHotCelsius;

    YeastStrain(
            String id,
            double minimumCelsius,
            double optimumCelsius,
            double maximumCelsius,
            double alcoholLimitPercent,
            double tooHotCelsius) {
        this.id = id;
        this.minimumCelsius = minimumCelsius;
        this.optimumCelsius = optimumCelsius;
        this.maximumCelsius = maximumCelsius;
        this.alcoholLimitPercent = alcoholLimitPercent;
        this.tooHotCelsius = tooHotCelsius;
    }

    @Override
    public String id() {
        return id;
    }

    public double minimumCelsius() {
        return minimumCelsius;
    }

    public double optimumCelsius() {
        return optimumCelsius;
    }

    public double maximumCelsius() {
        return maximumCelsius;
    }

    /** Strength at which uptake ends, % by volume. */
    public double alcoholLimitPercent() {
        return alcoholLimitPercent;
    }

    /** Above this for half a day the yeast suffers, °C (assumption). */
    public double tooHotCelsius() {
        return tooHotCelsius;
    }
}
