package undercroft.cellar;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.Sanitiser;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * What a batch that is not capped yet knows beyond its beer and yeast: a draft, which may be unfinished or not add up.
 *
 * @param bottles the empty bottles, in the order in which to fill them
 * @param gravities readings since fermentation slowed
 * @param steps what of the day's list is ticked or timed
 */
public record FillingPlan(
        Shares shares,
        List<BottleStock> bottles,
        Wish wish,
        Wash wash,
        List<DatedGravity> gravities,
        List<StepState> steps) {
    /**
     * Where the beer goes.
     *
     * @param vesselLitres beer in the fermenting vessel
     * @param lossLitres what stays behind with the sediment, in hoses and in the hydrometer jar
     * @param kegLitres part that goes to a keg
     */
    public record Shares(double vesselLitres, double lossLitres, double kegLitres) {
        public Shares {
            Check.within("vesselLitres", vesselLitres, 0.1, 2_000, "L");
            Check.within("lossLitres", lossLitres, 0, 2_000, "L");
            Check.within("kegLitres", kegLitres, 0, 2_000, "L");
        }

        /** What is left for the bottles; zero or less when the figures do not add up. */
        public double bottleLitres() {
            return vesselLitres - lossLitres - kegLitres;
        }
    }

    /**
     * The carbonation wanted and the sugar for it.
     *
     * @param targetVolumes wanted in the bottles, volumes of CO2
     * @param kegTargetVolumes wanted in the keg, where it is not that of the bottles
     * @param sugarId kind of priming sugar
     * @param perBottle true when each bottle is dosed by itself
     */
    public record Wish(double targetVolumes, OptionalDouble kegTargetVolumes, String sugarId, boolean perBottle) {
        public Wish {
            Check.within("targetVolumes", targetVolumes, 0, 7, "volumes");
            checkOptional("kegTargetVolumes", kegTargetVolumes, 0, 7, "volumes");
            Check.id("sugar", sugarId);
        }

        public static Wish of(double targetVolumes, String sugarId) {
            return new Wish(targetVolumes, OptionalDouble.empty(), sugarId, false);
        }
    }

    /**
     * What to clean and sanitise with; the rates are those of the labels, empty for the usual ones.
     *
     * @param sanitiserMillilitresPerLitre product in a litre of water
     * @param cleanerGramsPerLitre product in a litre of water
     */
    public record Wash(
            Sanitiser sanitiser,
            OptionalDouble sanitiserMillilitresPerLitre,
            Cleaner cleaner,
            OptionalDouble cleanerGramsPerLitre) {
        public Wash {
            checkOptional("sanitiserMillilitresPerLitre", sanitiserMillilitresPerLitre, 0.05, 100, "mL/L");
            checkOptional("cleanerGramsPerLitre", cleanerGramsPerLitre, 0.1, 200, "g/L");
        }

        /** At the usual rates. */
        public static Wash of(Sanitiser sanitiser, Cleaner cleaner) {
            return new Wash(sanitiser, OptionalDouble.empty(), cleaner, OptionalDouble.empty());
        }
    }

    public FillingPlan {
        bottles = List.copyOf(bottles);
        gravities = List.copyOf(gravities);
        steps = List.copyOf(steps);
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < steps.size(); i++) {
            if (!seen.add(steps.get(i).id())) {
                throw new InvalidInput("steps[" + i + "].id", "cellar.fault.step-twice");
            }
        }
    }

    private static void checkOptional(String where, OptionalDouble value, double min, double max, String unit) {
        if (value.isPresent()) {
            Check.within(where, value.getAsDouble(), min, max, unit);
        }
    }

    /** A first draft: table sugar as syrup, nothing measured, no bottles set out. A twentieth, or 1 L, is taken for lost. */
    public static FillingPlan draft(double vesselLitres, double targetVolumes) {
        return new FillingPlan(
                new Shares(vesselLitres, Math.min(1, vesselLitres / 20), 0),
                List.of(),
                Wish.of(targetVolumes, "sucrose"),
                Wash.of(Sanitiser.ACID_ANIONIC, Cleaner.PERCARBONATE),
                List.of(),
                List.of());
    }

    public FillingPlan withShares(Shares changed) {
        return new FillingPlan(changed, bottles, wish, wash, gravities, steps);
    }

    public FillingPlan withBottles(List<BottleStock> changed) {
        return new FillingPlan(shares, changed, wish, wash, gravities, steps);
    }

    public FillingPlan withWish(Wish changed) {
        return new FillingPlan(shares, bottles, changed, wash, gravities, steps);
    }

    public FillingPlan withWash(Wash changed) {
        return new FillingPlan(shares, bottles, wish, changed, gravities, steps);
    }

    public FillingPlan withGravities(List<DatedGravity> changed) {
        return new FillingPlan(shares, bottles, wish, wash, changed, steps);
    }

    public FillingPlan withSteps(List<StepState> changed) {
        return new FillingPlan(shares, bottles, wish, wash, gravities, changed);
    }
}
