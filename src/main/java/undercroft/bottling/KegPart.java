package undercroft.bottling;

import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.CarbonDioxideSolubility;
import undercroft.calc.gas.RealExtract;
import undercroft.calc.gas.WaterVapour;
import undercroft.calc.priming.PrimingDose;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Mass;
import undercroft.quantity.Phrase;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;

/**
 * The beer that goes to a keg.
 *
 * @param dose sugar, if it is to be primed by itself
 * @param servingCelsius at which its kind is usually served
 * @param gaugeBar pressure of CO2 to hold at that temperature instead of priming
 */
public record KegPart(PrimingDose dose, double servingCelsius, double gaugeBar) {

    static KegPart of(BottlingPlan plan) {
        double target = plan.filling()
                .wish()
                .kegTargetVolumes()
                .orElse(plan.filling().wish().targetVolumes());
        Carbonation wanted = Carbonation.ofVolumes(target);
        PrimingDose dose = PrimingDose.forTarget(
                plan.sugar(),
                plan.filling().shares().kegLitres(),
                plan.beer().warmestCelsius(),
                wanted,
                plan.atmosphereBar());
        double celsius = plan.beer().kind().servingCelsius().median();
        double factor = BeerFactor.of(plan.beer().abvPercent(), RealExtract.USUAL_GRAMS_PER_LITRE)
                .median();
        double bar = CarbonDioxideSolubility.partialPressureBar(celsius, wanted.gramsPerLitre(), factor)
                + WaterVapour.overBeerBar(celsius)
                - plan.atmosphereBar();
        return new KegPart(dose, celsius, Math.max(0, bar));
    }

    public double litres() {
        return dose.beerLitres();
    }

    /** The choice between sugar and gas from a cylinder. */
    public Phrase words() {
        Pressure gas = Pressure.ofBar(gaugeBar);
        Temperature cold = Temperature.ofCelsius(servingCelsius);
        return dose.notNeeded()
                ? Phrase.of("bottling.keg.gas", gas, cold)
                : Phrase.of(
                        "bottling.keg.sugar-or-gas", Mass.ofGrams(dose.grams().median()), dose.sugar(), gas, cold);
    }
}
