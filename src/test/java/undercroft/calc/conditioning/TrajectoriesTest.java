package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.at;
import static undercroft.calc.conditioning.Beers.constant;
import static undercroft.calc.conditioning.Beers.days;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.calc.numeric.Softplus;
import undercroft.calc.numeric.WrightOmega;
import undercroft.series.Track;

/** The fast form against an integrator that knows only the differential equations, and against closed forms. */
class TrajectoriesTest {
    private static final double GAS_CONSTANT = 8.314462618e-3;

    /** Oracle: Hipparchus DormandPrince853 on dq, dS, dD, dv of the model, members from all corners of the prior. */
    @Test
    void agreesWithAnIntegratorOfTheDifferentialEquations() {
        Refermentation beer = Beers.primedWith(Beers.DOSE, 0.5, 5);
        ConditioningEnsemble ensemble = ConditioningEnsemble.of(beer, 32);
        double[] checked = {0.5, 2, 5, 9, 14, 21, 40, 55};
        assertAgreement(ensemble, day -> 19, checked, 1e-5);
        assertAgreement(ensemble, day -> 17 - 0.12 * day, checked, 1e-5);
        assertAgreement(ensemble, day -> 17 - 0.12 * day + 2.5 * zigzag(day), checked, 1e-5);
    }

    /** Up and down once a day in straight lines, as a track runs between its grid points. */
    private static double zigzag(double day) {
        return 1 - 4 * Math.abs(day - Math.floor(day) - 0.5);
    }

    private static void assertAgreement(
            ConditioningEnsemble ensemble, DoubleUnaryOperator celsius, double[] checked, double tolerance) {
        double[] values = new double[60 * 24 + 1];
        for (int i = 0; i < values.length; i++) {
            values[i] = celsius.applyAsDouble(i / 24.0);
        }
        Track track = Track.of(CAPPED, 3600, values, new double[values.length]);
        ConditioningRun run = ensemble.run(track, CAPPED, at(checked));
        for (int m = 0; m < ensemble.size(); m++) {
            double[] state = {0.05 / 1.05, ensemble.memberConstants().hexose[m], 1, 1};
            double from = 0;
            for (int i = 0; i < checked.length; i++) {
                state = integrated(ensemble.memberConstants(), m, celsius, state, from, checked[i]);
                from = checked[i];
                double fraction = 1 - state[1] / ensemble.memberConstants().hexose[m];
                assertEquals(fraction, run.fractionDone(m, i), tolerance, "member " + m + " on day " + checked[i]);
                double made = ensemble.memberConstants().priming[m] * fraction + 5 * (1 - state[2]);
                assertEquals(ensemble.memberConstants().residual[m] + made, run.gramsPerLitre(m, i), 5e-4);
            }
        }
    }

    private static double[] integrated(
            EnsembleParameters member,
            int m,
            DoubleUnaryOperator temperature,
            double[] state,
            double from,
            double until) {
        OrdinaryDifferentialEquation model = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 4;
            }

            @Override
            public double[] computeDerivatives(double day, double[] y) {
                double celsius = temperature.applyAsDouble(day);
                CardinalTemperatures yeast =
                        new CardinalTemperatures(member.minimum[m], member.optimum, member.maximum);
                double gamma = yeast.share(celsius) / yeast.share(21);
                double alpha = y[0];
                return new double[] {
                    Math.log(20) / member.lagDays[m] * gamma * alpha * (1 - alpha),
                    -member.effectiveRate[m] * gamma * alpha * y[3] * y[1] / (member.halfSaturation[m] + y[1]),
                    -member.hiddenPerDay[m] * gamma * y[2],
                    -(member.deathPerDay[m] * arrhenius(celsius, 78, 21) + 0.3 * arrhenius(celsius, 300, 40)) * y[3]
                };
            }
        };
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-8, 0.1, 1e-11, 1e-10);
        return integrator.integrate(model, new ODEState(from, state), until).getPrimaryState();
    }

    private static double arrhenius(double celsius, double kilojoules, double reference) {
        return Math.exp(kilojoules / GAS_CONSTANT * (1 / (reference + 273.15) - 1 / (celsius + 273.15)));
    }

    /**
     * The closed form at one temperature and without loss of yeast, t = (λ/(cγ)) ln{[(1+q0) e^(c need/λ) − 1]/q0}, with
     * need = (f S0 + K ln(1/(1−f)))/R; days computed by an independent script.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 59.28876183731618, 65.93829477248141",
        "12, 34.243230190637405, 38.08378074191867",
        "15.5, 17.497744224970823, 19.460204274892277",
        "18, 12.374741570868402, 13.762631098152427",
        "21, 8.988871649893593, 9.99701883046636",
        "25, 6.654861022555898, 7.401237168339751"
    })
    void agreesWithTheClosedFormAtOneTemperature(double celsius, double t90, double t95) {
        double[][] z = new double[1][EnsembleParameters.DIMENSIONS];
        z[0][EnsembleParameters.DEATH] = -60;
        ConditioningRun run = new ConditioningEnsemble(Beers.ale(), 1, z, Offsets.NONE, 1, new double[] {1}, null)
                .run(constant(celsius, 120), CAPPED, new long[0]);
        assertEquals(9.99701883046636, Trajectory.daysAtReference(EnsembleParameters.of(Beers.ale(), z, 1), 0), 1e-9);
        // Heat death cannot be turned off; at 25 °C it takes 0.003 a day.
        double tolerance = celsius < 20 ? 2e-3 : 0.02;
        assertEquals(t90, days(run.t90EpochSecond(0)), tolerance * t90);
        assertEquals(t95, days(run.t95EpochSecond(0)), tolerance * t95);
    }

    /** Lambert's W as in Schnell and Mendoza 1997 for S0 = 6.3, K = 1, R = 1; computed by an independent script. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 6.213780195515207",
        "1, 5.44571970797423",
        "3, 3.8043931439183396",
        "6, 1.6436377237371949",
        "6.3, 1.4612543931589157",
        "9, 0.31041021510957373",
        "15, 0.0010483909093663088",
        "30, 3.210416126028449e-10"
    })
    void leavesTheSugarThatLambertsFunctionLeaves(double work, double left) {
        assertEquals(left, WrightOmega.at(Math.log(6.3) + 6.3 - work), 1e-13 * left + 1e-22);
    }

    /** ω(1) = 1 and ω(0) = 0.5671432904097838, the omega constant: Corless et al. 1996, Adv. Comput. Math. 5:329. */
    @Test
    void theWrightFunctionHasItsKnownValuesAndSolvesItsEquation() {
        assertEquals(1, WrightOmega.at(1), 1e-15);
        assertEquals(0.5671432904097838, WrightOmega.at(0), 1e-15);
        for (double y = -35; y < 600; y += 0.37) {
            double w = WrightOmega.at(y);
            assertEquals(y, w + Math.log(w), 1e-13 * Math.max(1, Math.abs(y)), "at " + y);
            assertEquals(w, WrightOmega.quick(y), 1e-8 * Math.max(1, w), "from the table at " + y);
        }
    }

    @Test
    void theTableOfSoftplusIsTheLibrarysFunction() {
        for (double x = -6; x < 40; x += 0.0137) {
            assertEquals(Math.log1p(Math.exp(x)), Softplus.at(x), 1e-8, "at " + x);
        }
    }

    /** Computed by an independent script from the two Arrhenius terms at the medians. */
    @ParameterizedTest
    @CsvSource({
        "4, 0.0014139632558348367",
        "12, 0.0036582223368812313",
        "21, 0.010175743963317633",
        "30, 0.03248125540344693",
        "35, 0.08884381280293532",
        "40, 0.36924407498512407"
    })
    void yeastDiesFasterInTheHeat(double celsius, double perDay) {
        assertEquals(perDay, YeastDeath.perDay(0.010, 1, celsius), 2e-5 * perDay);
    }

    /**
     * Regression vector of this model, from a fourth-order integration by an independent script with a lag of 5 hours
     * between room and bottle: 21 °C, ten days in a fridge at 4 °C, then 20 °C.
     */
    @Test
    void followsAHistoryThroughTheFridge() {
        double[] celsius = new double[40 * 24 + 1];
        double bottle = 21;
        for (int i = 0; i < celsius.length; i++) {
            double warm = i < 14 * 24 ? 21 : 20;
            double room = i >= 4 * 24 && i < 14 * 24 ? 4 : warm;
            bottle = room + (bottle - room) * Math.exp(-1 / 5.0);
            celsius[i] = bottle;
        }
        double[] checked = {2, 4, 8, 14, 18, 22, 28, 35};
        double[] fractions = {
            0.13375743066145318, 0.3841206536053068, 0.3940127594804542, 0.39410375749689763,
            0.7538746970380532, 0.964399452948122, 0.9995847322028395, 0.9999975594289222
        };
        Track track = Track.of(CAPPED, 3600, celsius, new double[celsius.length]);
        ConditioningRun run = ConditioningEnsemble.medianOf(Beers.ale()).run(track, CAPPED, at(checked));
        for (int i = 0; i < checked.length; i++) {
            assertEquals(fractions[i], run.fractionDone(0, i), 3e-4, "day " + checked[i]);
        }
    }
}
