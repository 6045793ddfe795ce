package undercroft.calc.conditioning;

import undercroft.calc.extract.DoseSpread;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.extract.Leftover;
import undercroft.calc.gas.TrappedAir;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/** Beers and cellars that the tests of this package share. */
final class Beers {
    static final long CAPPED = 1_700_000_000L;
    static final long DAY = 86400;

    /** 6.3 g/L of hexose: a usual dose, 2.99 g/L of carbon dioxide. */
    static final double DOSE = 6.3 * EnsembleParameters.GRAMS_PER_GRAM_HEXOSE;

    private static final DoseSpread NO_SPREAD = new DoseSpread(0, 0);

    private Beers() {}

    static Refermentation ale() {
        return of(YeastStrain.ALE, YeastState.ORDINARY, 5);
    }

    static Refermentation of(YeastStrain strain, YeastState state, double abvPercent) {
        return new Refermentation(
                strain,
                state,
                abvPercent,
                Interval.of(1.5, 1.7, 1.9),
                Interval.of(0.87 * DOSE, DOSE, 1.14 * DOSE),
                NO_SPREAD,
                Leftover.NONE,
                HiddenExtract.NONE,
                TrappedAir.of(FillingMethod.CAREFUL),
                Interval.of(0.92, 0.95, 0.98));
    }

    /**
     * A dose with the spread of its interval alone.
     *
     * @param hidden extract in every bottle of the batch, told as carbon dioxide at its median; 0 for none
     */
    static Refermentation primedWith(double grams, double extra, double hidden) {
        return new Refermentation(
                YeastStrain.ALE,
                YeastState.ORDINARY,
                5,
                Interval.of(1.5, 1.7, 1.9),
                Interval.of(0.87 * grams, grams, 1.14 * grams),
                NO_SPREAD,
                new Leftover(extra, 0),
                hidden > 0
                        ? new HiddenExtract(
                                1,
                                hidden / EnsembleParameters.GRAMS_PER_GRAM_HEXOSE,
                                1e-6,
                                1000,
                                HiddenExtract.DIASTATIC.perDayAt21())
                        : HiddenExtract.NONE,
                TrappedAir.of(FillingMethod.CAREFUL),
                Interval.of(0.92, 0.95, 0.98));
    }

    /** Hourly, one temperature, known without spread. */
    static Track constant(double celsius, int days) {
        return Track.constant(CAPPED, 3600, days * 24 + 1, celsius);
    }

    static double days(double epochSecond) {
        return (epochSecond - CAPPED) / DAY;
    }

    static long[] at(double... days) {
        long[] instants = new long[days.length];
        for (int i = 0; i < days.length; i++) {
            instants[i] = CAPPED + Math.round(days[i] * DAY);
        }
        return instants;
    }
}
