package undercroft.calc.chill;

/**
 * Dry air at one atmosphere as free convection sees it.
 *
 * @param conductivity thermal conductivity, W/(m·K)
 * @param viscosity kinematic, m²/s
 * @param diffusivity thermal, m²/s
 */
record Air(double kelvin, double conductivity, double viscosity, double diffusivity) {
    private static final double GRAVITY = 9.80665;

    /**
     * Air at a film temperature. Viscosity and conductivity by Sutherland's law with the constants of the U.S. Standard
     * Atmosphere 1976 (equations 51 and 53); specific heat 1,006 J/(kg·K), good to 0.2 % from −40 to 60 °C.
     */
    static Air at(double celsius) {
        double kelvin = celsius + 273.15;
        double rootCubed = kelvin * Math.sqrt(kelvin);
        double dynamic = 1.458e-6 * rootCubed / (kelvin + 110.4);
        double density = 101_325 / (287.053 * kelvin);
        double conductivity = 2.64638e-3 * rootCubed / (kelvin + 245.4 * Math.pow(10, -12 / kelvin));
        return new Air(kelvin, conductivity, dynamic / density, conductivity / (density * 1006));
    }

    double prandtl() {
        return viscosity / diffusivity;
    }

    /** Rayleigh number of a body of the given size, m, whose surface is {@code kelvins} off the air. */
    double rayleigh(double metres, double kelvins) {
        return GRAVITY / kelvin * Math.abs(kelvins) * metres * metres * metres / (viscosity * diffusivity);
    }
}
