package undercroft.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import undercroft.calc.conditioning.CardinalTemperatures;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.ConditioningRun;
import undercroft.calc.conditioning.Observation;
import undercroft.calc.conditioning.Refermentation;
import undercroft.calc.extract.DoseSpread;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.extract.Leftover;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.TrappedAir;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * One batch over a year of hourly temperatures, 1,024 members and 400 instants, against a general integrator
 * (Hipparchus DormandPrince853) that follows one member: the ratio to report is 1,024 times its time over ours.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ConditioningBench {
    private static final int HOURS = 365 * 24;
    private static final int INSTANTS = 400;
    private final Track year = year();
    private final long[] instants = instants();
    private final Refermentation beer = new Refermentation(
            YeastStrain.ALE,
            YeastState.ORDINARY,
            5,
            Interval.of(1.4, 1.6, 1.7),
            Interval.of(2.9, 3.1, 3.3),
            DoseSpread.USUAL,
            Leftover.NONE,
            HiddenExtract.of(HiddenExtract.Known.UNREAD),
            TrappedAir.NOT_TOLD,
            Interval.of(0.9, 0.95, 1));
    private final ConditioningEnsemble ensemble = ConditioningEnsemble.of(beer, 1024);
    private final ClosedBottle bottle = ClosedBottle.of(344, 330, 5, 20, 1.01325);
    private final List<Observation> readings = readings();

    @Benchmark
    public ConditioningRun ensembleOfAYear() {
        return ensemble.run(year, 0, instants);
    }

    @Benchmark
    public double[] oneMemberByAGeneralIntegrator() {
        CardinalTemperatures yeast = new CardinalTemperatures(4, 31, 40);
        OrdinaryDifferentialEquation model = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 3;
            }

            @Override
            public double[] computeDerivatives(double day, double[] y) {
                double celsius = year.valueAt((int) Math.min(HOURS - 1, day * 24));
                double gamma = yeast.share(celsius) / yeast.share(21);
                double alpha = y[0] / (1 + y[0]);
                double sugar = Math.max(0, y[1]);
                double death = 0.01 * Math.exp(9381 * (1 / 294.15 - 1 / (celsius + 273.15)));
                return new double[] {
                    Math.log(20) * gamma * y[0] * (y[0] > 1e9 ? 0 : 1),
                    -gamma * alpha * y[2] * sugar / (1 + sugar),
                    -death * y[2]
                };
            }
        };
        double[] state = {0.05, 6.3, 1};
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 1, 1e-7, 1e-6);
        for (int i = 1; i < INSTANTS; i++) {
            double from = instants[i - 1] / 86_400.0;
            state = integrator.integrate(model, new ODEState(from, state), instants[i] / 86_400.0).getPrimaryState();
        }
        return state;
    }

    @Benchmark
    public ConditioningEnsemble refinementWithTwentyReadings() {
        return ensemble.updated(
                readings,
                year,
                0,
                (celsius, grams, factor, amount, trapped) ->
                        bottle.gaugeBar(
                                celsius,
                                Math.max(0, Math.min(grams, 20)),
                                Math.max(0.5, Math.min(1.1, factor)),
                                amount,
                                trapped,
                                Double.NaN));
    }

    private static Track year() {
        double[] celsius = new double[HOURS];
        for (int i = 0; i < HOURS; i++) {
            celsius[i] = 17 - 4 * Math.cos(2 * Math.PI * i / HOURS) + 1.5 * Math.sin(2 * Math.PI * i / 24);
        }
        return Track.of(0, 3600, celsius, new double[HOURS]);
    }

    private static long[] instants() {
        long[] instants = new long[INSTANTS];
        for (int i = 0; i < INSTANTS; i++) {
            instants[i] = (long) i * (HOURS - 1) * 3600 / INSTANTS;
        }
        return instants;
    }

    private static List<Observation> readings() {
        List<Observation> readings = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            double bar = 2.1 * (1 - Math.exp(-(i + 1) / 5.0));
            readings.add(new Observation.GaugePressure((2L + i) * 86_400, bar, i % 2, 14));
        }
        return readings;
    }
}
