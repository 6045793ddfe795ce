package undercroft.calc.chill;

/** Heat that still air carries off a bottle: Churchill and Chu 1975, Int. J. Heat Mass Transfer 18:1323 and 18:1049. */
public final class FreeConvection {
    private FreeConvection() {}

    /**
     * Mean coefficient of an upright surface, laminar: Nu = 0.68 + 0.670 Ra^¼ / [1 + (0.492/Pr)^(9/16)]^(4/9), good to
     * Ra = 10⁹, which no bottle reaches.
     *
     * @param metres height, above 0
     * @param surfaceCelsius temperature of the outside, −40 to 60 °C
     * @param airCelsius temperature of the air far off, −40 to 60 °C
     * @return W/(m²·K); where both are equal, the conduction that is left
     */
    public static double upright(double metres, double surfaceCelsius, double airCelsius) {
        Air film = Air.at((surfaceCelsius + airCelsius) / 2);
        double rayleigh = film.rayleigh(metres, surfaceCelsius - airCelsius);
        double fluid = Math.pow(1 + Math.pow(0.492 / film.prandtl(), 9.0 / 16), 4.0 / 9);
        double nusselt = 0.68 + 0.670 * Math.sqrt(Math.sqrt(rayleigh)) / fluid;
        return nusselt * film.conductivity() / metres;
    }

    /**
     * Mean coefficient of a lying cylinder: Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}², good to
     * Ra = 10¹². Bottles are reckoned as standing; lying ones are some 8 % faster.
     *
     * @param metres diameter, above 0
     * @param surfaceCelsius temperature of the outside, −40 to 60 °C
     * @param airCelsius temperature of the air far off, −40 to 60 °C
     * @return W/(m²·K)
     */
    public static double lying(double metres, double surfaceCelsius, double airCelsius) {
        Air film = Air.at((surfaceCelsius + airCelsius) / 2);
        double rayleigh = film.rayleigh(metres, surfaceCelsius - airCelsius);
        double fluid = Math.pow(1 + Math.pow(0.559 / film.prandtl(), 9.0 / 16), 8.0 / 27);
        double root = 0.60 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / fluid;
        return root * root * film.conductivity() / metres;
    }
}
