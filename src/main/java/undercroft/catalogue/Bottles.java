package undercroft.catalogue;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The bottles that come with the tool. Sizes and weights are typical figures from memory, to be replaced by a measured
 * bottle of the user's own; the brimful volumes leave the 4 % or so that is usual for crown bottles. One-way bottles of brown
 * glass count as 2.0 mm thick: brown keeps light out by its thickness, and a thicker wall would credit too much.
 */
public final class Bottles {
    public static final List<BottleType> STANDARD = List.of(
            bottle(
                    "longneck-330",
                    "330 mL longneck",
                    GlassColour.AMBER,
                    BottleClass.STANDARD,
                    Closure.CROWN,
                    330,
                    344,
                    200,
                    61),
            bottle(
                    "longneck-355",
                    "355 mL longneck",
                    GlassColour.AMBER,
                    BottleClass.STANDARD,
                    Closure.CROWN,
                    355,
                    370,
                    205,
                    61),
            bottle(
                    "returnable-500",
                    "500 mL returnable",
                    GlassColour.AMBER,
                    BottleClass.REFILLABLE,
                    Closure.CROWN,
                    500,
                    520,
                    375,
                    70),
            bottle(
                    "swingtop-500",
                    "500 mL swing-top",
                    GlassColour.AMBER,
                    BottleClass.REFILLABLE,
                    Closure.SWING_TOP,
                    500,
                    522,
                    440,
                    72),
            bottle(
                    "swingtop-1000",
                    "1 L swing-top",
                    GlassColour.AMBER,
                    BottleClass.REFILLABLE,
                    Closure.SWING_TOP,
                    1000,
                    1040,
                    680,
                    92),
            bottle(
                    "sparkling-375",
                    "375 mL sparkling",
                    GlassColour.GREEN,
                    BottleClass.SPARKLING,
                    Closure.CROWN,
                    375,
                    392,
                    520,
                    72),
            bottle(
                    "sparkling-750",
                    "750 mL sparkling",
                    GlassColour.GREEN,
                    BottleClass.SPARKLING,
                    Closure.CROWN,
                    750,
                    776,
                    860,
                    88),
            bottle(
                    "pet-500",
                    "500 mL plastic",
                    GlassColour.PET_CLEAR,
                    BottleClass.PET,
                    Closure.SCREW,
                    500,
                    525,
                    26,
                    66),
            bottle(
                    "pet-1000",
                    "1 L plastic",
                    GlassColour.PET_CLEAR,
                    BottleClass.PET,
                    Closure.SCREW,
                    1000,
                    1045,
                    38,
                    84));

    private Bottles() {}

    private static BottleType bottle(
            String id,
            String label,
            GlassColour colour,
            BottleClass bottleClass,
            Closure closure,
            double fill,
            double brimful,
            double grams,
            double diameter) {
        double wall = switch (bottleClass) {
            case PET, PET_WORN -> 0.35;
            case SPARKLING, SPARKLING_REUSED -> 3.5;
            case STANDARD, REUSED -> 2.0;
            case REFILLABLE, NOT_FOR_PRESSURE -> 2.5;
        };
        return new BottleType(
                id, label, colour, bottleClass, closure, fill, brimful, wall, grams, diameter, OptionalDouble.empty());
    }
}
