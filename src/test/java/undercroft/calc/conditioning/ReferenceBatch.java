package undercroft.calc.conditioning;

import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import undercroft.calc.extract.DoseSpread;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.extract.Leftover;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.PressureTable;
import undercroft.calc.gas.TrappedAir;
import undercroft.calc.priming.Dosing;
import undercroft.calc.priming.PrimingYield;
import undercroft.calc.priming.ResidualCarbonation;
import undercroft.calc.priming.SugarAddition;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugars;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * The batch all check values of hidden extract are about: 120 g of sucrose in 19 L, 5 % ABV, finished at 20 °C, 50 longnecks
 * (330 mL in 344 mL) at 20 °C, looked at on day 70, working pressure 4.7 bar.
 *
 * @param grams sugar
 * @param hidden what may be hidden
 * @param leftover what a gravity says was left
 * @param wide all that is not known, or without gross slips of the dose, foam-capped bottles, error of the gauge and half of
 *     what is not known of the place
 */
record ReferenceBatch(double grams, HiddenExtract hidden, Leftover leftover, boolean wide) {
    static final int NOW = 70;
    static final double STRONGEST = Dosing.SYRUP.strongestOf(50);
    static final PressureLimits LIMITS = new PressureLimits(3.5, 4.7, 12);
    static final ClosedBottle BOTTLE =
            ClosedBottle.of(344, 330, 5, ClosedBottle.USUAL_CAPPING_CELSIUS, Atmosphere.barAt(0));
    static final PressureModel GAUGE = (celsius, grams, factor, amount, trapped) -> BOTTLE.gaugeBar(
            Math.max(-5, Math.min(60, celsius)),
            Math.max(0, Math.min(ClosedBottle.MOST_GRAMS_PER_LITRE, grams)),
            Math.max(0.5, Math.min(1.1, factor)),
            amount,
            trapped,
            Double.NaN);
    private static final int DAYS = 90;
    private static final double EXACT_GAUGE = 0;
    private static final double USUAL_GAUGE = 0.05;

    static ReferenceBatch narrow(double probability) {
        return new ReferenceBatch(120, HiddenExtract.undeclared(probability), Leftover.NONE, false);
    }

    static ReferenceBatch wide(double probability) {
        return new ReferenceBatch(120, HiddenExtract.undeclared(probability), Leftover.NONE, true);
    }

    Refermentation beer() {
        double bar = Atmosphere.barAt(0);
        return new Refermentation(
                YeastStrain.ALE,
                YeastState.ORDINARY,
                5,
                ResidualCarbonation.gramsPerLitre(20, bar),
                PrimingYield.of(List.of(new SugarAddition(Listed.find(Sugars.STANDARD, "sucrose", "sugar"), grams)), 19)
                        .expectedGramsPerLitre(),
                wide ? DoseSpread.USUAL : DoseSpread.NO_SLIPS,
                leftover,
                hidden,
                wide ? TrappedAir.NOT_TOLD : TrappedAir.of(FillingMethod.CAREFUL),
                BeerFactor.of(5, 40));
    }

    /** Hourly at 20 °C, for the place logged or known by hearsay. */
    Track track() {
        double[] celsius = new double[DAYS * 24 + 1];
        double[] spread = new double[celsius.length];
        Arrays.fill(celsius, 20);
        Arrays.fill(spread, wide ? 1 : 0.5);
        return Track.of(CAPPED, 3600, celsius, spread);
    }

    LotReadings lot(List<Observation> readings, double minuteBar) {
        return new LotReadings(
                readings,
                track(),
                CAPPED,
                GAUGE,
                Optional.of(new GlassStrength(minuteBar, Dosing.SYRUP.coefficientOfVariation())));
    }

    ConditioningEnsemble after(List<Observation> readings) {
        ConditioningEnsemble prior = ConditioningEnsemble.of(beer(), 512);
        return readings.isEmpty() ? prior : prior.updated(List.of(lot(readings, 12)), wide ? USUAL_GAUGE : EXACT_GAUGE);
    }

    Figures figures(List<Observation> readings) {
        return figures(after(readings));
    }

    Figures figures(ConditioningEnsemble ensemble) {
        ConditioningRun run = ensemble.run(track(), CAPPED, new long[] {CAPPED + NOW * DAY});
        PressureForecast forecast =
                PressureForecast.of(ensemble, run, PressureTable.of(BOTTLE, ClosedBottle.MOST_GRAMS_PER_LITRE, 0.95));
        double spread = wide ? 1 : 0.5;
        LimitTemperatures limit = forecast.limitTemperatures(STRONGEST, LIMITS);
        return new Figures(
                ensemble.explanation(),
                run.finalCarbonationVolumes(),
                forecast.at(0, 20, spread),
                forecast.strongestAt(0, 20, spread, STRONGEST),
                limit.heatLimit().orInfinite(),
                limit.median().orInfinite(),
                forecast.probabilityOver(0, 20, spread, STRONGEST, LIMITS.workingPressureBar()),
                limit.probabilityOver(20),
                limit.probabilityOver(28));
    }

    /**
     * What the tables give.
     *
     * @param overNow that the strongest bottle is over 4.7 bar on day 70
     * @param over20 the same with everything released, at 20 °C
     * @param over28 the same at 28 °C
     */
    record Figures(
            Explanation explanation,
            Interval atEnd,
            Interval bar,
            Interval strongest,
            double heatLimit,
            double heatMedian,
            double overNow,
            double over20,
            double over28) {
        double hidden() {
            return explanation.moreToFerment();
        }
    }

    static Observation gauge(double day, double bar, int bottle) {
        return new Observation.GaugePressure(CAPPED + Math.round(day * DAY), bar, bottle, 0, 20);
    }

    static List<Observation> gauges(double... bars) {
        return IntStream.range(0, bars.length)
                .mapToObj(i -> gauge(68, bars[i], i))
                .toList();
    }

    static Observation gravity(double day, double points) {
        return new Observation.ApparentGravity(CAPPED + Math.round(day * DAY), 1.012 + points / 1000, 1.012, false);
    }

    static List<Observation> bursts(int burst, int of) {
        return List.of(new Observation.Bursts(CAPPED + 24 * DAY, burst, of, Observation.Flaw.UNKNOWN));
    }
}
