package undercroft.calc.conditioning;

import java.util.Arrays;

/**
 * Follows every member along the steps. Uptake, lag and loss of yeast are separable, so three running integrals carry
 * the whole state and no equation is integrated:
 *
 * <pre>
 *   lag clock   L = ∫ γ dt,   γ = g(T) / g(21 °C)
 *   active part α = q / (1 + q),   q = q0 e^(c L / λ),   q0 = 0.05, c = ln 20
 *   working yeast v = e^−∫k dt
 *   work        Θ = ∫ γ α v dt
 *   sugar left  S0 − S + K ln(S0/S) = R φ Θ
 * </pre>
 *
 * ∫ γ α dt is λ/c times a rise of ln(1 + q) however γ runs within a step, so a step needs only the means of γ and of the
 * loss of yeast. They are taken at one standard deviation below and above the step's mean temperature, which is right for
 * any cubic; v is its mean over the step.
 */
final class Courses {
    private static final double START_ACTIVITY = 0.05;
    private static final double LAG_SHARPNESS = Math.log(20);
    private static final double REFERENCE_CELSIUS = 21;

    /** A member is followed until this share is left, which is then called nothing. */
    private static final double NOTHING_LEFT = 1e-5;

    /** Below this swing within a step the mean temperature alone serves, K. */
    private static final double STILL_KELVIN = 0.02;

    private static final double HEAT_NEEDS_EXPONENTIAL = 0.02;

    /** Share of the sugar taken up, instant by instant and member by member within. */
    final float[] fraction;

    /** Share of the dextrins taken up in the same order; null when there are none. */
    final float[] dextrinFraction;

    final double[] t90;
    final double[] t95;
    final double[] ready;

    private final Members members;
    private final Steps steps;
    private final int instants;

    private Courses(Members members, Steps steps, int instants, boolean dextrins) {
        this.members = members;
        this.steps = steps;
        this.instants = instants;
        fraction = new float[instants * members.size];
        dextrinFraction = dextrins ? new float[instants * members.size] : null;
        t90 = never(members.size);
        t95 = never(members.size);
        ready = never(members.size);
    }

    private static double[] never(int size) {
        double[] instants = new double[size];
        Arrays.fill(instants, Double.POSITIVE_INFINITY);
        return instants;
    }

    /**
     * Days to 95 % at 21 °C without loss of yeast, in closed form: a measure of how fast a member is.
     *
     * @return days, +∞ when the yeast cannot work at this strength
     */
    static double daysAtReference(Members members, int m) {
        if (!(members.effectiveRate[m] > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double effort = 0.95 * members.hexose[m] + members.halfSaturation[m] * Math.log(20);
        double perLag = LAG_SHARPNESS / members.lagDays[m];
        double growth = perLag * effort / members.effectiveRate[m];
        // For a long course ln[((1+q0) e^x − 1)/q0] is x + ln((1+q0)/q0), and e^x would overflow.
        double log = growth > 30
                ? growth + Math.log1p(1 / START_ACTIVITY)
                : Math.log(((1 + START_ACTIVITY) * Math.exp(growth) - 1) / START_ACTIVITY);
        return log / perLag;
    }

    /** Follows all members; the course stops at the last step and stands still after it. */
    static Courses follow(Members members, Steps steps, int instants, boolean dextrins) {
        Courses courses = new Courses(members, steps, instants, dextrins);
        for (int m = 0; m < members.size; m++) {
            courses.follow(m);
        }
        return courses;
    }

    private void follow(int m) {
        double minimum = members.minimum[m];
        double optimum = members.optimum;
        double maximum = members.maximum;
        double perReference = 1 / CardinalTemperatures.share(minimum, optimum, maximum, REFERENCE_CELSIUS);
        double z = members.temperatureZ[m];
        double death = members.deathPerDay[m];
        double dextrinPerDay = members.dextrinPerDay[m];
        double cleanUp = members.cleanUpDays[m];
        double perLag = LAG_SHARPNESS / members.lagDays[m];
        double lagOrigin = Math.log(START_ACTIVITY);
        double softplusBefore = Softplus.at(lagOrigin);
        double work90 = workFor(m, 0.90);
        double work95 = workFor(m, 0.95);
        double workDone = workFor(m, 1 - NOTHING_LEFT);
        double start = steps.size == 0 ? 0 : steps.endEpochSecond[0] - steps.days[0] * Steps.SECONDS_PER_DAY;
        double logStart = Math.log(members.hexose[m] / members.halfSaturation[m]);
        boolean at90 = work90 == 0;
        boolean at95 = work95 == 0;
        double readyAtClock = Double.POSITIVE_INFINITY;
        if (at95 && steps.size > 0) {
            t90[m] = start;
            t95[m] = start;
            readyAtClock = cleanUp;
        }
        boolean isReady = false;
        double clock = 0;
        double work = 0;
        double alive = 1;
        double dextrinClock = 0;
        int next = steps.instantsBefore;
        double previousFraction = work95 == 0 ? 1 : 0;
        for (int i = 0; i < next; i++) {
            fraction[i * members.size + m] = (float) previousFraction;
        }
        for (int s = 0; s < steps.size; s++) {
            double days = steps.days[s];
            double celsius = steps.celsius[s] + z * steps.spread[s];
            double swing = steps.swing[s];
            double gamma;
            double loss;
            if (swing < STILL_KELVIN) {
                gamma = CardinalTemperatures.share(minimum, optimum, maximum, celsius) * perReference;
                loss = YeastDeath.perDay(death, celsius) * days;
            } else {
                gamma = (CardinalTemperatures.share(minimum, optimum, maximum, celsius - swing)
                                + CardinalTemperatures.share(minimum, optimum, maximum, celsius + swing))
                        * (perReference / 2);
                loss = (YeastDeath.perDay(death, celsius - swing) + YeastDeath.perDay(death, celsius + swing))
                        * (days / 2);
            }
            double survive;
            double meanAlive;
            if (loss < HEAT_NEEDS_EXPONENTIAL) {
                survive = alive * (1 - loss * (1 - loss * (0.5 - loss / 6)));
                meanAlive = alive * (1 - loss * (0.5 - loss / 6));
            } else {
                survive = alive * Math.exp(-loss);
                meanAlive = (alive - survive) / loss;
            }
            double workBefore = work;
            double clockBefore = clock;
            if (gamma > 0) {
                clock += gamma * days;
                double softplus = Softplus.at(lagOrigin + perLag * clock);
                work += meanAlive * (softplus - softplusBefore) / perLag;
                softplusBefore = softplus;
                dextrinClock += gamma * meanAlive * days;
            }
            alive = survive;
            if (!at95) {
                if (!at90 && work >= work90) {
                    t90[m] = within(s, workBefore, work, work90);
                    at90 = true;
                }
                if (work >= work95) {
                    t95[m] = within(s, workBefore, work, work95);
                    double share = (work95 - workBefore) / (work - workBefore);
                    readyAtClock = clockBefore + share * (clock - clockBefore) + cleanUp;
                    at95 = true;
                }
            }
            if (!isReady && clock >= readyAtClock) {
                ready[m] = within(s, clockBefore, clock, readyAtClock);
                isReady = true;
            }
            if (next < steps.instantsPassed[s]) {
                float done = (float) fractionFor(m, work, workDone, logStart);
                float dextrins = dextrinsFor(dextrinPerDay * dextrinClock);
                for (; next < steps.instantsPassed[s]; next++) {
                    record(m, next, done, dextrins);
                }
            }
            if (isReady && work >= workDone && dextrinFraction == null) {
                break;
            }
        }
        float done = (float) fractionFor(m, work, workDone, logStart);
        float dextrins = dextrinsFor(dextrinPerDay * dextrinClock);
        for (; next < instants; next++) {
            record(m, next, done, dextrins);
        }
    }

    private void record(int m, int instant, float done, float dextrins) {
        fraction[instant * members.size + m] = done;
        if (dextrinFraction != null) {
            dextrinFraction[instant * members.size + m] = dextrins;
        }
    }

    private float dextrinsFor(double clock) {
        return dextrinFraction == null ? 0 : (float) -Math.expm1(-clock);
    }

    private double within(int step, double before, double after, double wanted) {
        double back = (after - wanted) / (after - before) * steps.days[step] * Steps.SECONDS_PER_DAY;
        return steps.endEpochSecond[step] - back;
    }

    /** Work at which a share of the sugar is gone; infinite when the yeast cannot work at this strength. */
    private double workFor(int m, double share) {
        double hexose = members.hexose[m];
        if (hexose <= 0) {
            return 0;
        }
        double effort = share * hexose + members.halfSaturation[m] * -Math.log1p(-share);
        return members.effectiveRate[m] > 0 ? effort / members.effectiveRate[m] : Double.POSITIVE_INFINITY;
    }

    private double fractionFor(int m, double work, double workDone, double logStart) {
        if (work >= workDone) {
            return 1;
        }
        if (members.effectiveRate[m] * work <= 0) {
            return 0;
        }
        double hexose = members.hexose[m];
        double k = members.halfSaturation[m];
        double y = logStart + (hexose - members.effectiveRate[m] * work) / k;
        return Math.max(0, 1 - k * WrightOmega.quick(y) / hexose);
    }
}
