package undercroft.calc.gas;

import java.util.Optional;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Phrase;

/**
 * What a bottle is trusted with, bar gauge: its class's figures, or 0.44 of the maker's own 60-second test. Derived for this
 * tool (see {@link BottleClass}); an estimate, not a permission.
 *
 * @param cautionBar worth watching from here on
 * @param workingPressureBar never to be exceeded
 * @param minuteStrengthBar what it is taken to stand for 60 seconds
 * @param warmestCelsius warmest storage its material is trusted at, °C, whatever the pressure; +∞ for glass
 */
public record PressureLimits(
        double cautionBar, double workingPressureBar, double minuteStrengthBar, double warmestCelsius) {
    /** What a year under load leaves of the strength shown in a minute: (60 s / 1 year)^(1/16) = 0.44. */
    public static final double YEAR_SHARE = 0.44;

    /** What reuse and scuffing leave of a new bottle's strength (assumption, behind the classes of worn bottles). */
    public static final double REUSED_SHARE = 0.7;

    /** Glass larger than this counts one class lower (British Glass TEC 7 gives no pressure for it), mL to the brim. */
    public static final double LARGE_GLASS_MILLILITRES = 1150;

    public PressureLimits {
        if (!(cautionBar > 0 && cautionBar <= workingPressureBar && workingPressureBar <= minuteStrengthBar)) {
            throw new IllegalArgumentException(
                    "limits out of order: " + cautionBar + ", " + workingPressureBar + ", " + minuteStrengthBar);
        }
    }

    /** Limits of glass, which bears any warmth of a room. */
    public PressureLimits(double cautionBar, double workingPressureBar, double minuteStrengthBar) {
        this(cautionBar, workingPressureBar, minuteStrengthBar, Double.POSITIVE_INFINITY);
    }

    /**
     * The limits of a make of bottle. The maker's figure, where known, takes the place of the class: 0.44 of it, never more
     * than a sparkling-wine bottle is trusted with, or for plastic than its class; 0.7 of that if the bottle is of a worn
     * class. Caution begins at the same share of the limit as in its class.
     */
    public static PressureLimits of(BottleType type) {
        BottleClass working = workingClass(type);
        if (type.makerTestBar().isEmpty()) {
            return new PressureLimits(
                    working.cautionBar(),
                    working.workingPressureBar(),
                    working.minuteStrengthBar(),
                    working.warmestCelsius());
        }
        BottleClass own = type.bottleClass();
        double wear = own == own.worn() && own != BottleClass.NOT_FOR_PRESSURE ? REUSED_SHARE : 1;
        double strength = wear * type.makerTestBar().getAsDouble();
        double most = own.isPlastic() ? own.workingPressureBar() : wear * BottleClass.SPARKLING.workingPressureBar();
        double limit = Math.min(most, YEAR_SHARE * strength);
        return new PressureLimits(
                limit * own.cautionBar() / own.workingPressureBar(), limit, strength, own.warmestCelsius());
    }

    /** The class whose figures hold: the bottle's own, or for glass above 1.15 L to the brim one lower. */
    public static BottleClass workingClass(BottleType type) {
        if (!type.isGlass() || type.brimfulMillilitres() <= LARGE_GLASS_MILLILITRES) {
            return type.bottleClass();
        }
        return switch (type.bottleClass()) {
            case SPARKLING -> BottleClass.REFILLABLE;
            case REFILLABLE -> BottleClass.STANDARD;
            case STANDARD, SPARKLING_REUSED -> BottleClass.REUSED;
            case REUSED, NOT_FOR_PRESSURE -> BottleClass.NOT_FOR_PRESSURE;
            case PET, PET_WORN -> type.bottleClass();
        };
    }

    /** Why this bottle should hold no conditioning beer at all, empty for one that may. */
    public static Optional<Phrase> refusal(BottleType type) {
        if (type.makerTestBar().isPresent() || workingClass(type) != BottleClass.NOT_FOR_PRESSURE) {
            return Optional.empty();
        }
        if (type.bottleClass() == BottleClass.NOT_FOR_PRESSURE) {
            return Optional.of(Phrase.of("bottling.refusal.not-rated"));
        }
        return Optional.of(Phrase.of("bottling.refusal.worn"));
    }
}
