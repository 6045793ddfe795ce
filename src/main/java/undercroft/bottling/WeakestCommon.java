package undercroft.bottling;

import java.util.List;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.FinishedPressure;
import undercroft.calc.gas.HeatLimit;
import undercroft.calc.gas.PossibleContents;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.RealExtract;
import undercroft.calc.gas.TrappedAir;
import undercroft.calc.priming.Dosing;
import undercroft.calc.priming.PrimingDose;
import undercroft.calc.priming.PrimingYield;
import undercroft.calc.priming.ResidualCarbonation;
import undercroft.calc.priming.SugarAddition;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Listed;
import undercroft.quantity.Interval;

/**
 * What a dose comes to in the weakest bottle in common use, where nobody has said which bottles there will be: a one-way
 * longneck, clean or scuffed, with finished beer of 5 %.
 *
 * @param bottle clean or scuffed
 * @param bottles of how many the strongest is meant
 * @param heatLimit warmest storage at which its 95 % pressure stays within the limit
 */
public record WeakestCommon(BottleType bottle, int bottles, PressureLimits limits, HeatLimit heatLimit) {
    /** A usual batch, where nobody has said how many bottles. */
    public static final int USUAL_BOTTLES = 50;

    private static final double USUAL_ABV = 5;
    private static final BottleType LONGNECK = Listed.find(Bottles.STANDARD, "longneck-330", "bottle");

    /**
     * The dose in a longneck.
     *
     * @param warmestCelsius highest temperature since fermentation slowed, −1 to 45 °C
     * @param atmosphereBar air pressure, 0.5 to 1.1 bar
     * @param scuffed whether the bottles are worn
     */
    public static WeakestCommon of(
            PrimingDose dose, double warmestCelsius, double atmosphereBar, int bottles, boolean scuffed) {
        BottleType bottle = LONGNECK.asUsed(GlassColour.AMBER, LONGNECK.fillMillilitres(), scuffed);
        Interval primed = dose.notNeeded()
                ? Interval.exactly(0)
                : PrimingYield.of(
                                List.of(new SugarAddition(
                                        dose.sugar(), dose.grams().median())),
                                dose.beerLitres())
                        .expectedGramsPerLitre();
        PossibleContents contents = PossibleContents.of(
                ResidualCarbonation.gramsPerLitre(warmestCelsius, atmosphereBar),
                primed,
                Interval.exactly(0),
                BeerFactor.of(USUAL_ABV, RealExtract.USUAL_GRAMS_PER_LITRE),
                TrappedAir.NOT_TOLD);
        PressureLimits limits = PressureLimits.of(bottle);
        HeatLimit heat = FinishedPressure.of(
                        ClosedBottle.of(bottle, USUAL_ABV, ClosedBottle.USUAL_CAPPING_CELSIUS, atmosphereBar), contents)
                .heatLimit(Dosing.SYRUP.strongestOf(bottles), limits);
        return new WeakestCommon(bottle, bottles, limits, heat);
    }
}
