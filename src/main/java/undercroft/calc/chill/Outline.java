package undercroft.calc.chill;

import undercroft.catalogue.BottleType;

/**
 * The outside of a bottle as a cylinder, a cone and a neck that enclose its volume: base and body of the body's
 * diameter, a shoulder two and a half diameters long, a neck 28 mm wide and 68 mm long. The shoulder is longer than a
 * real one, so that the outside comes out as 0.040, 0.053 and 0.075 m² for a usual 330 mL longneck, 500 mL returnable
 * and 750 mL sparkling bottle (typical figures from memory, within 1 %).
 */
record Outline(double areaSquareMetres, double heightMetres) {
    private static final double GLASS_KILOGRAMS_PER_CUBIC_METRE = 2500;
    private static final double PLASTIC_KILOGRAMS_PER_CUBIC_METRE = 1370;
    private static final double NECK_METRES = 0.028;
    private static final double NECK_LENGTH_METRES = 0.068;
    private static final double SHOULDER_DIAMETERS = 2.5;
    // The hollow under a sparkling-wine bottle, as a share of the fill.
    private static final double PUNT_SHARE = 0.05;

    static Outline of(BottleType type) {
        double density = type.isGlass() ? GLASS_KILOGRAMS_PER_CUBIC_METRE : PLASTIC_KILOGRAMS_PER_CUBIC_METRE;
        double punt = type.bottleClass().isSparkling() ? PUNT_SHARE * type.fillMillilitres() * 1e-6 : 0;
        double volume = type.brimfulMillilitres() * 1e-6 + type.emptyGrams() / 1000 / density + punt;
        return enclosing(volume, type.bodyMillimetres() / 1000);
    }

    private static Outline enclosing(double volume, double body) {
        double neck = Math.min(NECK_METRES, body);
        double neckLength = NECK_LENGTH_METRES;
        double shoulder = SHOULDER_DIAMETERS * body;
        double perShoulderMetre = Math.PI / 12 * (body * body + body * neck + neck * neck);
        double above = perShoulderMetre * shoulder + Math.PI / 4 * neck * neck * neckLength;
        double bodyLength = 0;
        if (above > volume) {
            double squat = volume / above;
            shoulder *= squat;
            neckLength *= squat;
        } else {
            bodyLength = (volume - above) / (Math.PI / 4 * body * body);
        }
        double ends = Math.PI / 4 * (body * body + neck * neck);
        double sides = Math.PI * (body * bodyLength + neck * neckLength);
        double cone = Math.PI / 2 * (body + neck) * Math.hypot(shoulder, (body - neck) / 2);
        return new Outline(ends + sides + cone, bodyLength + shoulder + neckLength);
    }
}
