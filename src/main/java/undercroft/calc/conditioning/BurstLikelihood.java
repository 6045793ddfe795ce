package undercroft.calc.conditioning;

import java.util.Arrays;
import java.util.List;
import undercroft.calc.gas.PressureMemory;
import undercroft.series.Track;

/**
 * How probable a lot's burst bottles are: k of n by a day, with the share of bottles that a member's pressure history is
 * expected to have burst. One binomial term for each count; a later one is about the bottles left and about how much the share
 * has risen. That nothing burst is not used: silence is not evidence, as nobody may have looked.
 *
 * <p>A cause the user told is heard, and then only what burst counts, so that no answer lowers a forecast: a chipped bottle is
 * judged by the strength of chipped ones; over-primed leaves the members whose dose is off by a fifth or more. "Not finished"
 * is heard where the strata are weighed against each other.
 */
final class BurstLikelihood {
    /** Pieces the history is cut into: a pressure is taken at the middle of each. */
    private static final int PIECES = 32;

    /** How sharply a dose below a fifth too much is ruled out, in shares of it. */
    private static final double DOSE_EDGE = 0.01;

    /** A share of bottles no history is below: something else may always break one. */
    private static final double LEAST_SHARE = 1e-9;

    private final LotReadings lot;
    private final List<Observation.Bursts> bursts;
    private final Steps steps;
    private final long[] middles;
    private final double[] celsius;
    private final double[] spread;
    private final double[] seconds;
    private final int[] piecesUntil;

    BurstLikelihood(LotReadings lot, List<Observation.Bursts> bursts) {
        this.lot = lot;
        this.bursts = bursts;
        long capped = lot.cappedEpochSecond();
        long end = bursts.get(bursts.size() - 1).epochSecond();
        Track bottle = lot.bottle();
        int count = PIECES + bursts.size();
        long[] edges = edges(capped, end, bursts, count);
        middles = new long[count];
        celsius = new double[count];
        spread = new double[count];
        seconds = new double[count];
        for (int i = 0; i < count; i++) {
            middles[i] = (edges[i] + edges[i + 1]) / 2;
            seconds[i] = edges[i + 1] - edges[i];
            int first = bottle.indexAt(edges[i]);
            int last = Math.max(first, bottle.indexAt(edges[i + 1]) - 1);
            for (int j = first; j <= last; j++) {
                celsius[i] += bottle.valueAt(j) / (last - first + 1);
                spread[i] += bottle.spreadAt(j) / (last - first + 1);
            }
        }
        piecesUntil = new int[bursts.size()];
        for (int b = 0; b < piecesUntil.length; b++) {
            int pieces = 0;
            while (pieces < count && edges[pieces + 1] <= bursts.get(b).epochSecond()) {
                pieces++;
            }
            piecesUntil[b] = pieces;
        }
        steps = Steps.of(bottle, capped, middles, end);
    }

    /** Even pieces, cut once more at each burst. */
    private static long[] edges(long capped, long end, List<Observation.Bursts> bursts, int count) {
        long[] edges = new long[count + 1];
        for (int i = 0; i <= PIECES; i++) {
            edges[i] = capped + Math.round((double) (end - capped) * i / PIECES);
        }
        for (int b = 0; b < bursts.size(); b++) {
            edges[PIECES + 1 + b] = bursts.get(b).epochSecond();
        }
        Arrays.sort(edges);
        return edges;
    }

    /** Log-likelihood of each count (rows) for each member (columns); zeros for plastic. */
    double[][] of(double[][] z, EnsembleParameters members) {
        double[][] logs = new double[bursts.size()][z.length];
        Trajectories trajectories = Trajectories.follow(members, steps, middles.length);
        for (int m = 0; m < z.length; m++) {
            double held = 0;
            double before = 0;
            int piece = 0;
            for (int b = 0; b < logs.length; b++) {
                if (lot.glass().isPresent()) {
                    for (; piece < piecesUntil[b]; piece++) {
                        held = PressureMemory.after(held, bar(members, m, trajectories, piece), seconds[piece]);
                    }
                    GlassStrength glass = lot.glass().get();
                    double share =
                            glass.shareBurst(held, z[m][EnsembleParameters.STRENGTH], z[m][EnsembleParameters.CHIPS]);
                    double chipped = glass.shareOfChippedBurst(held, z[m][EnsembleParameters.STRENGTH]);
                    logs[b][m] = log(bursts.get(b), share, before, chipped);
                    before = share;
                }
                if (bursts.get(b).flaw() == Observation.Flaw.OVER_PRIMED) {
                    logs[b][m] += logOverPrimed(members.doseFactor(m));
                }
            }
        }
        return logs;
    }

    private static double log(Observation.Bursts burst, double share, double before, double chipped) {
        double rise = Math.max(LEAST_SHARE, (share - before) / Math.max(LEAST_SHARE, 1 - before));
        int others = burst.present() - burst.burst();
        return switch (burst.flaw()) {
            case CHIPPED -> burst.burst() * Math.log(Math.max(LEAST_SHARE, chipped));
            case OVER_PRIMED, UNFINISHED -> burst.burst() * Math.log(rise);
            case UNKNOWN -> burst.burst() * Math.log(rise) + others * Math.log1p(-Math.min(rise, 1 - LEAST_SHARE));
        };
    }

    private double bar(EnsembleParameters members, int m, Trajectories trajectories, int piece) {
        return lot.pressure()
                .gaugeBar(
                        celsius[piece] + members.temperatureZ[m] * spread[piece],
                        members.residual[m] + trajectories.made(m, piece),
                        members.beerFactor[m],
                        members.airAmount[m],
                        members.airTrapped[m]);
    }

    private static double logOverPrimed(double doseFactor) {
        double lacking = Math.max(0, Explanation.MORE_SUGAR_FACTOR - doseFactor) / DOSE_EDGE;
        return -lacking * lacking / 2;
    }
}
