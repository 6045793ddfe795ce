package undercroft.calc.conditioning;

import undercroft.calc.numeric.Softplus;
import undercroft.calc.numeric.WrightOmega;

/**
 * One member on its way along the steps. Uptake, lag and loss of yeast are separable, so three running integrals carry
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
 * any cubic; v is its mean over the step. Mutable, and set to the next member instead of made anew.
 */
final class Trajectory {
    private static final double START_ACTIVITY = 0.05;
    private static final double LOG_START_ACTIVITY = Math.log(START_ACTIVITY);
    private static final double LAG_SHARPNESS = Math.log(20);
    private static final double REFERENCE_CELSIUS = 21;

    /** A member is followed until this share is left, which is then called nothing. */
    private static final double NOTHING_LEFT = 1e-5;

    /** Below this swing within a step the mean temperature alone serves, K. */
    private static final double STILL_KELVIN = 0.02;

    private static final double HEAT_NEEDS_EXPONENTIAL = 0.02;

    private final EnsembleParameters members;

    private int m;
    private double minimum;
    private double perReference;
    private double perLag;
    private double logStart;
    private double work90;
    private double work95;
    private double workDone;
    private double softplus;
    private double alive;

    private double clock;
    private double clockBefore;
    private double work;
    private double workBefore;

    Trajectory(EnsembleParameters members) {
        this.members = members;
    }

    /** Back to capping, as another member. */
    void begin(int member) {
        m = member;
        minimum = members.minimum[m];
        perReference = 1 / share(REFERENCE_CELSIUS);
        perLag = LAG_SHARPNESS / members.lagDays[m];
        logStart = Math.log(members.hexose[m] / members.halfSaturation[m]);
        work90 = workFor(0.90);
        work95 = workFor(0.95);
        workDone = workFor(1 - NOTHING_LEFT);
        softplus = Softplus.at(LOG_START_ACTIVITY);
        alive = 1;
        clock = 0;
        work = 0;
    }

    /** Through one step: days, its mean temperature and that temperature's standard deviation within it. */
    void advance(double days, double celsius, double swing) {
        clockBefore = clock;
        workBefore = work;
        double death = members.deathPerDay[m];
        double gamma;
        double loss;
        if (swing < STILL_KELVIN) {
            gamma = share(celsius) * perReference;
            loss = YeastDeath.perDay(death, members.heatFactor, celsius) * days;
        } else {
            gamma = (share(celsius - swing) + share(celsius + swing)) * (perReference / 2);
            loss = (YeastDeath.perDay(death, members.heatFactor, celsius - swing)
                            + YeastDeath.perDay(death, members.heatFactor, celsius + swing))
                    * (days / 2);
        }
        double meanAlive;
        if (loss < HEAT_NEEDS_EXPONENTIAL) {
            meanAlive = alive * (1 - loss * (0.5 - loss / 6));
            alive *= 1 - loss * (1 - loss * (0.5 - loss / 6));
        } else {
            double survive = alive * Math.exp(-loss);
            meanAlive = (alive - survive) / loss;
            alive = survive;
        }
        if (gamma > 0) {
            clock += gamma * days;
            double after = Softplus.at(LOG_START_ACTIVITY + perLag * clock);
            work += meanAlive * (after - softplus) / perLag;
            softplus = after;
        }
    }

    /** Share of the sugar taken up so far. */
    double fraction() {
        if (work >= workDone) {
            return 1;
        }
        double rate = members.effectiveRate[m];
        if (rate * work <= 0) {
            return 0;
        }
        double hexose = members.hexose[m];
        double k = members.halfSaturation[m];
        return Math.max(0, 1 - k * WrightOmega.quick(logStart + (hexose - rate * work) / k) / hexose);
    }

    /** The lag clock alone: for a member whose sugar is gone. */
    void advanceClock(double days, double celsius, double swing) {
        clock += days * perReference / 2 * (share(celsius - swing) + share(celsius + swing));
    }

    /**
     * Share of the hidden extract let go so far: dH/dt = −k γ H. Loss of yeast is left out, on the careful side: what
     * reaches hidden extract may be a yeast nobody pitched.
     */
    double hiddenFraction() {
        return 1 - Math.exp(-members.hiddenPerDay[m] * clock);
    }

    boolean isDone() {
        return work >= workDone;
    }

    boolean reached90() {
        return work >= work90;
    }

    boolean reached95() {
        return work >= work95;
    }

    /** Where within the last step 90 % were reached, 0 to 1 of its length. */
    double shareOfStepTo90() {
        return work > workBefore ? (work90 - workBefore) / (work - workBefore) : 0;
    }

    /** Where within the last step 95 % were reached, 0 to 1 of its length. */
    double shareOfStepTo95() {
        return work > workBefore ? (work95 - workBefore) / (work - workBefore) : 0;
    }

    double clock() {
        return clock;
    }

    /** The lag clock at a share of the last step. */
    double clockAt(double shareOfStep) {
        return clockBefore + shareOfStep * (clock - clockBefore);
    }

    /** Where within the last step the lag clock showed a time, 0 to 1 of its length. */
    double shareOfStepToClock(double wanted) {
        return clock > clockBefore ? Math.max(0, (wanted - clockBefore) / (clock - clockBefore)) : 0;
    }

    /**
     * Days to 95 % at 21 °C without loss of yeast, in closed form: a measure of how fast a member is.
     *
     * @return days, +∞ when the yeast cannot work at this strength
     */
    static double daysAtReference(EnsembleParameters members, int m) {
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

    private double share(double celsius) {
        return CardinalTemperatures.share(minimum, members.optimum, members.maximum, celsius);
    }

    /** Work at which a share of the sugar is gone; infinite when the yeast cannot work at this strength. */
    private double workFor(double share) {
        double hexose = members.hexose[m];
        if (hexose <= 0) {
            return 0;
        }
        double effort = share * hexose + members.halfSaturation[m] * -Math.log1p(-share);
        return members.effectiveRate[m] > 0 ? effort / members.effectiveRate[m] : Double.POSITIVE_INFINITY;
    }
}
