package undercroft.calc.priming;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.Gravity;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.quantity.Temperature;

/**
 * Whether the beer is ready to be bottled, and the gas that would come on top of the priming if it is not.
 *
 * @param verdict go, wait or not known
 * @param reason says why
 * @param points gravity points the last reading stands above the expected final gravity, never below 0
 * @param extraGramsPerLitre carbon dioxide these points would add in the closed bottle, g/L; zero says nothing when no
 *     gravity was read or the expected final gravity is not known
 */
public record UnfinishedFermentation(Verdict verdict, Phrase reason, double points, Interval extraGramsPerLitre) {
    /** Whether to bottle. */
    public enum Verdict {
        GO,
        WAIT,
        UNKNOWN
    }

    /** Two readings as good as equal on a hydrometer read to half a division. */
    private static final double EQUAL_POINTS = 0.55;

    private static final double FINISHED_POINTS = 1.05;
    private static final int DAYS_APART = 2;

    /**
     * CO2 from one point of the hydrometer falling, g/L: at 1.008 to 1.020 a point is 2.08 to 2.10 g/L of real extract,
     * which gives 0.965 by Balling's factors and 1.08 by maltose theory (computed from 0.8192 × apparent extract and the ASBC
     * extract table).
     */
    private static final Interval PER_POINT = Interval.of(0.965, 1.0, 1.08);

    /**
     * CO2 from the dextrins that a diastatic or wild yeast reaches in the end, g/L: from 10 g/L of them (assumption; 5 to 20
     * are possible).
     */
    public static final double DEXTRIN_GRAMS_PER_LITRE = 4.7;

    /**
     * Carbon dioxide from gravity points that ferment in the bottle, g/L. The same for points left over and for a pool of
     * dextrins that a diastatic or wild yeast can open.
     *
     * @param points thousandths of specific gravity, 0 to 60
     */
    public static Interval gramsPerLitre(double points) {
        return PER_POINT.times(Check.within("points", points, 0, 60, ""));
    }

    /**
     * The rule of two equal readings two days apart (common practice, no source), and the distance to the expected end.
     *
     * @param readings in any order; none gives {@link Verdict#UNKNOWN}
     * @param expectedFinal gravity the beer should end at, empty when the user does not know
     * @param today no reading may be dated later
     * @throws InvalidInput for a reading dated in the future
     */
    public static UnfinishedFermentation assess(
            List<GravityReading> readings, Optional<Gravity> expectedFinal, LocalDate today) {
        List<GravityReading> inOrder = readings.stream()
                .sorted(Comparator.comparing(GravityReading::day))
                .toList();
        if (inOrder.isEmpty()) {
            return unknown(Phrase.of("fermentation.unread"), 0);
        }
        GravityReading last = inOrder.get(inOrder.size() - 1);
        if (last.day().isAfter(today)) {
            throw new InvalidInput("readings", "fermentation.fault.future", last.day());
        }
        double points = expectedFinal
                .map(end -> Math.max(0, last.gravity().points() - end.points()))
                .orElse(0.0);
        if (points > FINISHED_POINTS) {
            return new UnfinishedFermentation(
                    Verdict.WAIT,
                    Phrase.of(
                            "fermentation.above-end",
                            tenths(points),
                            Phrase.of(
                                    "quantity.volumes",
                                    tenths(PER_POINT.median() * points / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME))),
                    points,
                    PER_POINT.times(points));
        }
        return settled(inOrder, last, points, expectedFinal.isPresent());
    }

    /** Volumes at stake if bottled now. */
    public Interval extraVolumes() {
        return extraGramsPerLitre.times(1 / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME);
    }

    private static UnfinishedFermentation settled(
            List<GravityReading> inOrder, GravityReading last, double points, boolean endKnown) {
        double fall = 0;
        boolean longEnough = false;
        for (int i = inOrder.size() - 2; i >= 0 && !longEnough; i--) {
            GravityReading earlier = inOrder.get(i);
            double change = earlier.gravity().points() - last.gravity().points();
            fall = Math.abs(change) > Math.abs(fall) ? change : fall;
            longEnough = ChronoUnit.DAYS.between(earlier.day(), last.day()) >= DAYS_APART;
        }
        if (fall > EQUAL_POINTS) {
            return new UnfinishedFermentation(
                    Verdict.WAIT, Phrase.of("fermentation.falling", tenths(fall)), points, PER_POINT.times(points));
        }
        if (fall < -EQUAL_POINTS) {
            return unknown(Phrase.of("fermentation.rising", Temperature.ofCelsius(20)), points);
        }
        if (!longEnough) {
            return unknown(Phrase.of("fermentation.one-more"), points);
        }
        if (!endKnown) {
            return unknown(Phrase.of("fermentation.no-end"), points);
        }
        return new UnfinishedFermentation(
                Verdict.GO, Phrase.of("fermentation.finished"), points, PER_POINT.times(points));
    }

    private static UnfinishedFermentation unknown(Phrase reason, double points) {
        return new UnfinishedFermentation(Verdict.UNKNOWN, reason, points, PER_POINT.times(points));
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
