package undercroft.calc.spell;

import java.util.ArrayList;
import java.util.List;

/**
 * Runs of a row of numbers that go up to one threshold for long enough and end below another. NaN is not known: it
 * neither breaks a run nor ends one.
 */
final class Excursions {
    /** First place, and the first place after it. */
    record Run(int from, int until) {}

    private final double start;
    private final double end;
    private final int startSteps;
    private final int endSteps;
    private final List<Run> runs = new ArrayList<>();
    private int candidate = -1;
    private int lastSeen = -1;
    private int below = -1;
    private boolean inside;

    private Excursions(double start, int startSteps, double end, int endSteps) {
        this.start = start;
        this.startSteps = Math.max(1, startSteps);
        this.end = end;
        this.endSteps = Math.max(1, endSteps);
    }

    static List<Run> find(double[] excess, double start, int startSteps, double end, int endSteps) {
        Excursions excursions = new Excursions(start, startSteps, end, endSteps);
        for (int i = 0; i < excess.length; i++) {
            if (Double.isNaN(excess[i])) {
                continue;
            }
            if (excursions.inside) {
                excursions.within(i, excess[i]);
            } else {
                excursions.outside(i, excess[i]);
            }
            excursions.lastSeen = i;
        }
        if (excursions.inside) {
            int until = excursions.below >= 0 ? excursions.below : excess.length;
            excursions.runs.add(new Run(excursions.candidate, until));
        }
        return excursions.runs;
    }

    private void outside(int i, double excess) {
        if (excess >= start) {
            candidate = candidate < 0 ? i : candidate;
            if (i - candidate + 1 >= startSteps) {
                inside = true;
                below = -1;
            }
            return;
        }
        // A beginning that ran into a gap and came out of it below may have been one; the gap makes it uncertain.
        if (candidate >= 0 && lastSeen < i - 1 && i - candidate >= startSteps) {
            runs.add(new Run(candidate, i));
        }
        candidate = -1;
    }

    private void within(int i, double excess) {
        if (excess >= end) {
            below = -1;
            return;
        }
        below = below < 0 ? i : below;
        if (i - below + 1 >= endSteps) {
            runs.add(new Run(candidate, below));
            inside = false;
            candidate = -1;
        }
    }
}
