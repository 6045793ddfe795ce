package undercroft.calc.conditioning;

import java.util.Arrays;

/** What came of following every member along the steps. */
final class Trajectories {
    /** Share of the sugar taken up, instant by instant and member by member within. */
    final float[] fraction;

    /** Share of the dextrins taken up in the same order; null when there are none. */
    final float[] dextrinFraction;

    /** Epoch seconds, +∞ for "not within the steps". */
    final double[] t90;

    final double[] t95;
    final double[] ready;

    private final EnsembleParameters members;
    private final Steps steps;
    private final int instants;

    private Trajectories(EnsembleParameters members, Steps steps, int instants, boolean dextrins) {
        this.members = members;
        this.steps = steps;
        this.instants = instants;
        fraction = new float[instants * members.size];
        // Most members are done at most instants: what they leave unwritten stands already, in one sweep over memory.
        Arrays.fill(fraction, 1);
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

    /** Follows all members; the course stops at the last step and stands still after it. */
    static Trajectories follow(EnsembleParameters members, Steps steps, int instants, boolean dextrins) {
        Trajectories trajectories = new Trajectories(members, steps, instants, dextrins);
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
            if (ready[m] < Double.POSITIVE_INFINITY && trajectory.isDone() && dextrinFraction == null) {
                break;
            }
        }
        if (!trajectory.isDone() || dextrinFraction != null) {
            record(trajectory, m, next, instants);
        }
    }

    /** Writes the state at the instants from one index up to another and returns the latter. */
    private int record(Trajectory trajectory, int m, int from, int until) {
        if (from < until) {
            float done = (float) trajectory.fraction();
            float dextrins = dextrinFraction == null ? 0 : (float) trajectory.dextrinFraction();
            for (int i = from; i < until; i++) {
                fraction[i * members.size + m] = done;
                if (dextrinFraction != null) {
                    dextrinFraction[i * members.size + m] = dextrins;
                }
            }
        }
        return until;
    }

    private double within(int step, double share) {
        return steps.endEpochSecond[step] - (1 - share) * steps.days[step] * Steps.SECONDS_PER_DAY;
    }
}
