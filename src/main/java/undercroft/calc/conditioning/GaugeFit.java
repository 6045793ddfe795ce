package undercroft.calc.conditioning;

import java.util.ArrayList;
import java.util.List;
import undercroft.calc.numeric.WeightedQuantiles;
import undercroft.quantity.Interval;

/**
 * What a gauge bottle, read again and again from capping to its plateau, says of the model: each reading beside what was
 * forecast without any reading and beside the fit, and the constants before and after. The fit is the same update that
 * every forecast with readings is made with; nothing is optimised apart from it.
 *
 * @param before the constants as they are believed without a reading
 * @param after the same, knowing these readings
 * @param verdict how these readings and the model get on; where they do not agree, the constants after are not to be trusted
 * @param points the readings in order of time
 */
public record GaugeFit(Constants before, Constants after, ReadingsVerdict verdict, List<Point> points) {
    /** A range told by fewer is too narrow. */
    private static final double FEW_MEMBERS = 40;

    private static final int MEMBERS = 1_024;

    public GaugeFit {
        points = List.copyOf(points);
    }

    /**
     * What is learned of a beer in its bottle, each as 5, 50 and 95 %.
     *
     * @param gramsPerLitreDay sugar taken up at 21 °C at its fastest, g of hexose per litre and day
     * @param lagDays rest before it begins, days at 21 °C
     * @param finalGramsPerLitre carbon dioxide when all is done, g per litre of beer
     */
    public record Constants(Interval gramsPerLitreDay, Interval lagDays, Interval finalGramsPerLitre) {}

    /**
     * One reading.
     *
     * @param bar as read, above the air
     * @param celsius temperature of the beer
     * @param forecast what was to be expected without any reading, bar
     * @param fitted what is believed to have been there, knowing all readings of the experiment, bar
     */
    public record Point(long epochSecond, double bar, double celsius, Interval forecast, Interval fitted) {
        /** Read less forecast, bar: above 0 where there was more than expected. */
        public double residualToForecast() {
            return bar - forecast.median();
        }

        /** Read less fitted, bar: what the model cannot follow, and the gauge's own error. */
        public double residualToFit() {
            return bar - fitted.median();
        }
    }

    /**
     * Fits one gauge bottle.
     *
     * @param experiment readings of a gauge alone
     */
    public static GaugeFit of(Refermentation beer, LotReadings experiment) {
        ConditioningEnsemble prior = ConditioningEnsemble.of(beer, MEMBERS);
        ConditioningEnsemble posterior = prior.updated(List.of(experiment));
        long[] instants = experiment.readings().stream()
                .mapToLong(Observation::epochSecond)
                .distinct()
                .toArray();
        List<Interval> forecast = bars(prior, experiment, instants);
        List<Interval> fitted = bars(posterior, experiment, instants);
        List<Point> points = new ArrayList<>();
        int at = 0;
        for (Observation reading : experiment.readings()) {
            Observation.GaugePressure gauge = (Observation.GaugePressure) reading;
            while (instants[at] < gauge.epochSecond()) {
                at++;
            }
            points.add(new Point(
                    gauge.epochSecond(), gauge.gaugeBar(), gauge.celsius(), forecast.get(at), fitted.get(at)));
        }
        return new GaugeFit(constants(prior), constants(posterior), posterior.verdict(), points);
    }

    private static List<Interval> bars(ConditioningEnsemble ensemble, LotReadings experiment, long[] instants) {
        ConditioningRun run = ensemble.run(experiment.bottle(), experiment.cappedEpochSecond(), instants);
        WeightedQuantiles quantiles = quantiles(ensemble);
        List<Interval> bars = new ArrayList<>();
        for (int i = 0; i < instants.length; i++) {
            int here = experiment.bottle().indexAt(instants[i]);
            double celsius = experiment.bottle().valueAt(here);
            double spread = experiment.bottle().spreadAt(here);
            double[] column = new double[ensemble.size()];
            for (int m = 0; m < column.length; m++) {
                column[m] = experiment
                        .pressure()
                        .gaugeBar(
                                celsius + ensemble.temperatureZ(m) * spread,
                                run.gramsPerLitre(m, i),
                                ensemble.beerFactor(m),
                                ensemble.airAmount(m),
                                ensemble.airTrapped(m));
            }
            bars.add(quantiles.interval(column));
        }
        return bars;
    }

    private static Constants constants(ConditioningEnsemble ensemble) {
        EnsembleParameters members = ensemble.memberConstants();
        WeightedQuantiles quantiles = quantiles(ensemble);
        double[] last = new double[ensemble.size()];
        for (int m = 0; m < last.length; m++) {
            last[m] = members.finalGramsPerLitre(m);
        }
        return new Constants(
                quantiles.interval(members.effectiveRate),
                quantiles.interval(members.lagDays),
                quantiles.interval(last));
    }

    private static WeightedQuantiles quantiles(ConditioningEnsemble ensemble) {
        double[] weights = new double[ensemble.size()];
        for (int m = 0; m < weights.length; m++) {
            weights[m] = ensemble.weight(m);
        }
        return new WeightedQuantiles(weights);
    }

    /** Whether the constants after mean something: readings the model explains, by more than a few of its members. */
    public boolean isSound() {
        return verdict.agreement() == ReadingsVerdict.Agreement.AGREES && verdict.effectiveSize() >= FEW_MEMBERS;
    }

    /** Root of the mean square of what the forecast missed, bar. */
    public double forecastMissedBar() {
        return Math.sqrt(points.stream()
                .mapToDouble(point -> point.residualToForecast() * point.residualToForecast())
                .average()
                .orElse(0));
    }

    /** Root of the mean square of what the fit misses, bar. */
    public double fitMissesBar() {
        return Math.sqrt(points.stream()
                .mapToDouble(point -> point.residualToFit() * point.residualToFit())
                .average()
                .orElse(0));
    }
}
