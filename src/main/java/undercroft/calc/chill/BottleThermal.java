package undercroft.calc.chill;

import undercroft.catalogue.BottleType;

/**
 * A filled bottle as heat sees it.
 *
 * @param heatCapacityKilojoulesPerKelvin beer and bottle together, kJ/K, above 0
 * @param areaSquareMetres outside with the base, m², above 0
 * @param plateMetres height over which the air's film grows, m, above 0
 * @param wallSquareMetreKelvinPerWatt resistance of the wall, m²·K/W, 0 or more
 */
public record BottleThermal(
        double heatCapacityKilojoulesPerKelvin,
        double areaSquareMetres,
        double plateMetres,
        double wallSquareMetreKelvinPerWatt) {
    private static final double BEER_KILOGRAMS_PER_LITRE = 1.010;
    private static final double BEER_KILOJOULES_PER_KILOGRAM_KELVIN = 4.05;
    private static final double GLASS_KILOJOULES_PER_KILOGRAM_KELVIN = 0.80;
    private static final double PLASTIC_KILOJOULES_PER_KILOGRAM_KELVIN = 1.2;

    // Body, shoulder and base of a glass bottle in the mean; the thinnest place says little about the heat.
    private static final double GLASS_MILLIMETRES = 3.5;
    private static final double GLASS_WATTS_PER_METRE_KELVIN = 1.0;
    private static final double PLASTIC_WATTS_PER_METRE_KELVIN = 0.2;

    // Share of the outline's height, so that U = 8.0 W/(m²·K) for a longneck 10 K off still air.
    private static final double PLATE_SHARE = 0.62;

    public BottleThermal {
        if (!(heatCapacityKilojoulesPerKelvin > 0)
                || !(areaSquareMetres > 0)
                || !(plateMetres > 0)
                || !(wallSquareMetreKelvinPerWatt >= 0)) {
            throw new IllegalArgumentException("a bottle has heat capacity, outside and height above nothing");
        }
    }

    /**
     * A filled bottle of the make: specific heats 4.05 (beer), 0.80 (glass) and 1.2 kJ/(kg·K) (plastic), glass 3.5 mm at
     * 1.0 W/(m·K) and plastic at 0.2 W/(m·K), all handbook figures from memory; the outside from {@link Outline}.
     */
    public static BottleThermal of(BottleType type) {
        Outline outline = Outline.of(type);
        double bottle = type.isGlass() ? GLASS_KILOJOULES_PER_KILOGRAM_KELVIN : PLASTIC_KILOJOULES_PER_KILOGRAM_KELVIN;
        double beerKilograms = type.fillMillilitres() / 1000 * BEER_KILOGRAMS_PER_LITRE;
        double capacity = beerKilograms * BEER_KILOJOULES_PER_KILOGRAM_KELVIN + type.emptyGrams() / 1000 * bottle;
        double wall = type.isGlass()
                ? GLASS_MILLIMETRES / 1000 / GLASS_WATTS_PER_METRE_KELVIN
                : type.wallMillimetres() / 1000 / PLASTIC_WATTS_PER_METRE_KELVIN;
        return new BottleThermal(capacity, outline.areaSquareMetres(), PLATE_SHARE * outline.heightMetres(), wall);
    }
}
