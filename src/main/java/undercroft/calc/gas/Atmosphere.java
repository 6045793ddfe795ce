package undercroft.calc.gas;

import undercroft.quantity.Check;

/** Air pressure of the International Standard Atmosphere. Weather moves it by about ±0.03 bar. */
public final class Atmosphere {
    /** One standard atmosphere, bar. */
    public static final double SEA_LEVEL_BAR = 1.01325;

    private Atmosphere() {}

    /**
     * Mean air pressure at a height, bar: 1.01325 (1 − 2.25577e-5 h)^5.25588 (ISO 2533:1975, troposphere).
     *
     * @param altitudeMetres height above the sea, −500 to 5,500 m
     * @throws undercroft.quantity.InvalidInput outside that range
     */
    public static double barAt(double altitudeMetres) {
        Check.within("altitudeMetres", altitudeMetres, -500, 5_500, "m");
        return SEA_LEVEL_BAR * Math.pow(1 - 2.25577e-5 * altitudeMetres, 5.25588);
    }
}
