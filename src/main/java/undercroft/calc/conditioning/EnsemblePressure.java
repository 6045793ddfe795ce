package undercroft.calc.conditioning;

import undercroft.calc.gas.LimitTemperatures;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.PressureTable;
import undercroft.calc.numeric.WeightedQuantiles;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.Track;

/** A forecast from every member of one ensemble, with its own carbonation, beer factor and air, asked of one prepared bottle. */
final class EnsemblePressure implements PressureForecast {
    private static final double[] LEVELS = {0.05, 0.25, 0.5, 0.75, 0.95};

    private final ConditioningEnsemble ensemble;
    private final ConditioningRun run;
    private final PressureTable.Row row;
    private final PressureTable.Row warmerRow;
    private final WeightedQuantiles quantiles;
    private final double[] column;
    private final double[] factorTerms;
    private final double[] amountTerms;
    private final double[] airTerms;

    /** A forecast for the members of {@code run}, which {@code ensemble} made. */
    EnsemblePressure(ConditioningEnsemble ensemble, ConditioningRun run, PressureTable table) {
        this.ensemble = ensemble;
        this.run = run;
        this.row = table.row();
        this.warmerRow = table.row();
        double[] weights = new double[ensemble.size()];
        for (int m = 0; m < weights.length; m++) {
            weights[m] = ensemble.weight(m);
        }
        this.quantiles = new WeightedQuantiles(weights);
        this.column = new double[weights.length];
        this.factorTerms = new double[weights.length];
        this.amountTerms = new double[weights.length];
        this.airTerms = new double[weights.length];
        for (int m = 0; m < weights.length; m++) {
            factorTerms[m] = table.factorTerm(ensemble.beerFactor(m));
            amountTerms[m] = PressureTable.amountTerm(ensemble.airAmount(m));
            airTerms[m] = PressureTable.airTerm(ensemble.airTrapped(m));
        }
    }

    @Override
    public Interval at(int instant, double celsius, double spreadKelvin) {
        fill(instant, celsius, spreadKelvin, 1);
        return quantiles.interval(column);
    }

    @Override
    public Interval strongestAt(int instant, double celsius, double spreadKelvin, double factor) {
        fill(instant, celsius, spreadKelvin, factor);
        return quantiles.interval(column);
    }

    @Override
    public Interval finished(double celsius) {
        row.at(celsius);
        for (int m = 0; m < column.length; m++) {
            column[m] = ofMember(row, m, run.finalGramsPerLitre(m));
        }
        return quantiles.interval(column);
    }

    @Override
    public LimitTemperatures limitTemperatures(double factor, PressureLimits limits) {
        double[] weights = new double[column.length];
        double[] grams = new double[column.length];
        for (int m = 0; m < weights.length; m++) {
            weights[m] = ensemble.weight(m);
            grams[m] = run.finalGramsPerLitre(m) + (factor - 1) * run.primedGramsPerLitre(m);
        }
        return LimitTemperatures.of(
                (celsius, bars) -> {
                    row.at(celsius);
                    for (int m = 0; m < bars.length; m++) {
                        bars[m] = ofMember(row, m, grams[m]);
                    }
                },
                weights,
                limits);
    }

    @Override
    public double probabilityOver(int instant, double celsius, double spreadKelvin, double factor, double bar) {
        fill(instant, celsius, spreadKelvin, factor);
        double over = 0;
        double all = 0;
        for (int m = 0; m < column.length; m++) {
            all += ensemble.weight(m);
            over += column[m] > bar ? ensemble.weight(m) : 0;
        }
        return over / all;
    }

    @Override
    public Band trajectory(Track bottle, double factor) {
        int n = run.instants();
        double[][] band = new double[LEVELS.length][n];
        long[] instants = new long[n];
        double[] out = new double[LEVELS.length];
        int[] milestones = run.milestones();
        SettledPressure[] settled = new SettledPressure[milestones.length];
        for (int a = 0; a < settled.length; a++) {
            settled[a] = settledAt(milestones[a], factor);
        }
        double[] after = new double[LEVELS.length];
        int passed = -1;
        for (int i = 0; i < n; i++) {
            instants[i] = run.instantAt(i);
            TemperatureRange weather =
                    TemperatureRange.between(bottle, i == 0 ? instants[0] : instants[i - 1], instants[i]);
            while (passed + 1 < milestones.length && milestones[passed + 1] <= i) {
                passed++;
            }
            if (passed < 0) {
                fill(i, weather.mean, weather.spread, factor);
                quantiles.of(column, LEVELS, out);
            } else {
                settled[passed].at(weather.mean, weather.spread, out);
                if (passed + 1 < milestones.length && run.hidesExtract()) {
                    long from = run.instantAt(milestones[passed]);
                    double share = (double) (instants[i] - from) / (run.instantAt(milestones[passed + 1]) - from);
                    settled[passed + 1].at(weather.mean, weather.spread, after);
                    for (int k = 0; k < out.length; k++) {
                        out[k] += share * (after[k] - out[k]);
                    }
                }
            }
            for (int k = 0; k < LEVELS.length; k++) {
                band[k][i] = out[k];
            }
            if (weather.warmest > weather.coldest) {
                double slope = slope(i, weather.mean);
                band[4][i] += Math.max(0, slope * (weather.warmest - weather.mean));
                band[0][i] -= Math.max(0, slope * (weather.mean - weather.coldest));
            }
        }
        return Band.of(instants, band);
    }

    /** How the first member, one like any other, answers to a kelvin at an instant, bar/K. */
    private double slope(int instant, double celsius) {
        double grams = run.gramsPerLitre(0, instant);
        return ofMember(warmerRow.at(celsius + 1), 0, grams) - ofMember(row.at(celsius), 0, grams);
    }

    private SettledPressure settledAt(int instant, double factor) {
        return new SettledPressure(celsius -> {
            double[] levels = new double[LEVELS.length];
            fill(instant, celsius, 0, factor);
            quantiles.of(column, LEVELS, levels);
            return levels;
        });
    }

    @Override
    public double secondsOver(
            Track bottle,
            Band trajectory,
            double factor,
            long fromInclusive,
            long untilExclusive,
            double workingPressureBar) {
        double seconds = 0;
        for (int i = 1; i < run.instants() && run.instantAt(i - 1) < untilExclusive; i++) {
            if (run.instantAt(i) <= fromInclusive || !(trajectory.highAt(i) > workingPressureBar)) {
                continue;
            }
            TemperatureRange weather = TemperatureRange.between(bottle, run.instantAt(i - 1), run.instantAt(i));
            fill(i, weather.coldest, weather.spread, factor);
            double coldest = quantiles.interval(column).high();
            double share = (workingPressureBar - coldest) / (trajectory.highAt(i) - coldest);
            double edge = share <= 0
                    ? Double.NEGATIVE_INFINITY
                    : weather.coldest + share * (weather.warmest - weather.coldest);
            long from = Math.max(fromInclusive, run.instantAt(i - 1));
            long until = Math.min(untilExclusive, run.instantAt(i));
            for (int j = bottle.indexAt(from); j < bottle.size() && bottle.timeAt(j) < until; j++) {
                if (bottle.valueAt(j) > edge) {
                    seconds += Math.min(until, bottle.timeAt(j) + bottle.stepSeconds())
                            - (double) Math.max(from, bottle.timeAt(j));
                }
            }
        }
        return seconds;
    }

    private void fill(int instant, double celsius, double spreadKelvin, double factor) {
        row.at(celsius);
        if (spreadKelvin > 0) {
            warmerRow.at(celsius + spreadKelvin);
        }
        for (int m = 0; m < column.length; m++) {
            double grams = run.gramsPerLitre(m, instant);
            if (factor != 1) {
                grams += (factor - 1) * run.primedGramsPerLitre(m, instant);
            }
            double bar = ofMember(row, m, grams);
            column[m] = spreadKelvin > 0 ? bar + ensemble.temperatureZ(m) * (ofMember(warmerRow, m, grams) - bar) : bar;
        }
    }

    private double ofMember(PressureTable.Row at, int m, double grams) {
        return at.ofTerms(grams, factorTerms[m], amountTerms[m], airTerms[m]);
    }

    /** What a track did between two instants. */
    private record TemperatureRange(double coldest, double mean, double warmest, double spread) {
        static TemperatureRange between(Track bottle, long from, long until) {
            int first = bottle.indexAt(from);
            int last = bottle.indexAt(until);
            double coldest = Double.POSITIVE_INFINITY;
            double warmest = Double.NEGATIVE_INFINITY;
            double sum = 0;
            double spread = 0;
            for (int i = first; i <= last; i++) {
                double value = bottle.valueAt(i);
                coldest = Math.min(coldest, value);
                warmest = Math.max(warmest, value);
                sum += value;
                spread += bottle.spreadAt(i);
            }
            int count = last - first + 1;
            return new TemperatureRange(coldest, sum / count, warmest, spread / count);
        }
    }
}
