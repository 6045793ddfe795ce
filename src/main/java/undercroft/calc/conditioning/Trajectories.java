package undercroft.calc.conditioning;

import java.util.Arrays;

/** What came of following every member along the steps. */
final class Trajectories {
    /** Share of the sugar taken up, instant by instant and member by member within. */
    final float[] fraction;

    /** Share of the hidden extract let go, in the same order, members from the first that has any; null when none has. */
    final float[] hiddenFraction;

    /** Epoch seconds, +∞ for "not within the steps". */
    final double[] t90;

    final double[] t95;
    final double[] ready;

    private final EnsembleParameters members;
    private final Steps steps;
    private final int instants;
    private final int hiding;

    private Trajectories(EnsembleParameters members, Steps steps, int instants) {
        this.members = members;
        this.steps = steps;
        this.instants = instants;
        fraction = new float[instants * members.size];
        // Most members are done at most instants: what they leave unwritten stands already, in one sweep over memory.
        Arrays.fill(fraction, 1);
        hiding = members.size - members.firstHidden;
        hiddenFraction = hiding > 0 ? new float[instants * hiding] : null;
        t90 = never(members.size);
        t95 = never(members.size);
        ready = never(members.size);
    }

    private static double[] never(int size) {
        double[] instants = new double[size];
        Arrays.fill(instants, Double.POSITIVE_INFINITY);
        return instants;
    }

    /** Follows all members; the course stops at the last step and stands still after it. */
    static Trajectories follow(EnsembleParameters members, Steps steps, int instants) {
        Trajectories trajectories = new Trajectories(members, steps, instants);
        Trajectory trajectory = new Trajectory(members);
        for (int m = 0; m < members.size; m++) {
            trajectory.begin(m);
            trajectories.follow(trajectory, m);
        }
        return trajectories;
    }

    private void follow(Trajectory trajectory, int m) {
        double z = members.temperatureZ[m];
        double readyAtClock = Double.POSITIVE_INFINITY;
        int next = record(trajectory, m, 0, steps.instantsBefore);
        for (int s = 0; s < steps.size; s++) {
            trajectory.advance(steps.days[s], steps.celsius[s] + z * steps.spread[s], steps.swing[s]);
            if (t90[m] == Double.POSITIVE_INFINITY && trajectory.reached90()) {
                t90[m] = within(s, trajectory.shareOfStepTo90());
            }
            if (t95[m] == Double.POSITIVE_INFINITY && trajectory.reached95()) {
                double share = trajectory.shareOfStepTo95();
                t95[m] = within(s, share);
                readyAtClock = trajectory.clockAt(share) + members.cleanUpDays[m];
            }
            if (ready[m] == Double.POSITIVE_INFINITY && trajectory.clock() >= readyAtClock) {
                ready[m] = within(s, trajectory.shareOfStepToClock(readyAtClock));
            }
            next = record(trajectory, m, next, steps.instantsPassed[s]);
            if (ready[m] < Double.POSITIVE_INFINITY && trajectory.isDone()) {
                if (m < members.firstHidden) {
                    return;
                }
                if (steps.legs.legAfterStep[s] >= 0) {
                    next = followHidden(trajectory, m, next, steps.legs.legAfterStep[s]);
                    break;
                }
            }
        }
        record(trajectory, m, next, instants);
    }

    /** Once the sugar is gone only the hidden extract goes on, straight within a leg; returns the next instant. */
    private int followHidden(Trajectory trajectory, int m, int from, int firstLeg) {
        Legs legs = steps.legs;
        double z = members.temperatureZ[m];
        int next = from;
        double before = trajectory.hiddenFraction();
        for (int l = firstLeg; l < legs.size; l++) {
            trajectory.advanceClock(legs.days[l], legs.celsius[l] + z * legs.spread[l], legs.swing[l]);
            double after = trajectory.hiddenFraction();
            for (; next < legs.instantsPassed[l]; next++) {
                hiddenFraction[next * hiding + m - members.firstHidden] =
                        (float) (before + legs.shareOfLeg[next] * (after - before));
            }
            before = after;
        }
        return next;
    }

    /** Carbon dioxide made since capping, g/L. */
    double made(int m, int instant) {
        double made = members.priming[m] * fraction[instant * members.size + m];
        return m < members.firstHidden
                ? made
                : made + members.hidden[m] * hiddenFraction[instant * hiding + m - members.firstHidden];
    }

    /** Writes the state at the instants from one index up to another and returns the latter. */
    private int record(Trajectory trajectory, int m, int from, int until) {
        if (from < until) {
            float done = (float) trajectory.fraction();
            for (int i = from; i < until; i++) {
                fraction[i * members.size + m] = done;
            }
            if (m >= members.firstHidden) {
                float released = (float) trajectory.hiddenFraction();
                for (int i = from; i < until; i++) {
                    hiddenFraction[i * hiding + m - members.firstHidden] = released;
                }
            }
        }
        return until;
    }

    private double within(int step, double share) {
        return steps.endEpochSecond[step] - (1 - share) * steps.days[step] * Steps.SECONDS_PER_DAY;
    }
}
