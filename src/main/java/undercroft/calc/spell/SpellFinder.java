package undercroft.calc.spell;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.calc.spell.BottleHistory.Patch;
import undercroft.series.Span;
import undercroft.series.Track;

/** Finds the warm and cold spells of a place in what its bottles felt. */
public final class SpellFinder {
    private static final double FEWEST_DAYS = 3;
    private static final double LIMIT_START_HOURS = 3;
    private static final double LIMIT_END_HOURS = 12;

    private final BottleHistory history;
    private final SpellRule rule;
    private final double[] known;
    private final double[] baseline;

    private SpellFinder(BottleHistory history, SpellRule rule) {
        this.history = history;
        this.rule = rule;
        this.known = knownValues(history);
        int perDay = steps(24);
        this.baseline = RunningMedian.trailing(
                known, Math.max(1, rule.medianDays() * perDay), (int) Math.min(FEWEST_DAYS * perDay, known.length));
    }

    private SpellFinder(SpellFinder prepared, SpellRule rule) {
        this.history = prepared.history;
        this.rule = rule;
        this.known = prepared.known;
        this.baseline = prepared.baseline;
    }

    /** Prepares the running median of a history; the first weeks are held against their own median. */
    public static SpellFinder of(BottleHistory history, SpellRule rule) {
        return new SpellFinder(history, rule);
    }

    /**
     * The spells of a history, by their beginnings. A spell beyond a limit is left out where an unusual one of its kind
     * says the same. One that still goes on ends with the history.
     */
    public static List<Spell> find(BottleHistory history, SpellRule rule) {
        return of(history, rule).spells();
    }

    /** The same history under another rule; what it was used to is not worked out again where that is the same. */
    public SpellFinder under(SpellRule other) {
        return other.medianDays() == rule.medianDays() ? new SpellFinder(this, other) : of(history, other);
    }

    /** See {@link #find}. */
    public List<Spell> spells() {
        List<Spell> spells = new ArrayList<>(unusual(Spell.Kind.WARM));
        spells.addAll(unusual(Spell.Kind.COLD));
        List<Spell> limits = new ArrayList<>();
        rule.warmLimitCelsius().ifPresent(limit -> limits.addAll(beyond(Spell.Kind.WARM, limit)));
        rule.coldLimitCelsius().ifPresent(limit -> limits.addAll(beyond(Spell.Kind.COLD, limit)));
        for (Spell limit : limits) {
            if (spells.stream()
                    .noneMatch(spell -> spell.cause() == Spell.Cause.UNUSUAL
                            && spell.kind() == limit.kind()
                            && spell.span().overlaps(limit.span()))) {
                spells.add(limit);
            }
        }
        spells.sort(Comparator.comparingLong(spell -> spell.span().fromInclusive()));
        return List.copyOf(spells);
    }

    /** What the bottles were used to at a grid point, °C; NaN where fewer than three days of the four weeks are known. */
    double baselineAt(int index) {
        return baseline[index];
    }

    private List<Spell> unusual(Spell.Kind kind) {
        double[] excess = new double[known.length];
        for (int i = 0; i < excess.length; i++) {
            excess[i] = sign(kind) * (known[i] - baseline[i]);
        }
        List<Spell> spells = new ArrayList<>();
        for (Excursions.Run run : Excursions.find(
                excess, rule.startKelvin(), steps(rule.startHours()), rule.endKelvin(), steps(rule.endHours()))) {
            spells.add(spell(kind, run, excess, baseline[run.from()], Spell.Cause.UNUSUAL));
        }
        return spells;
    }

    private List<Spell> beyond(Spell.Kind kind, double limitCelsius) {
        double[] excess = new double[known.length];
        for (int i = 0; i < excess.length; i++) {
            excess[i] = sign(kind) * (known[i] - limitCelsius);
        }
        List<Spell> spells = new ArrayList<>();
        for (Excursions.Run run : Excursions.find(
                excess, Double.MIN_VALUE, steps(LIMIT_START_HOURS), Double.MIN_VALUE, steps(LIMIT_END_HOURS))) {
            spells.add(spell(kind, run, excess, limitCelsius, Spell.Cause.LIMIT));
        }
        return spells;
    }

    private Spell spell(Spell.Kind kind, Excursions.Run run, double[] excess, double usedTo, Spell.Cause cause) {
        Track track = history.track();
        double peak = known[run.from()];
        double kelvinSteps = 0;
        for (int i = run.from(); i < run.until(); i++) {
            if (!Double.isNaN(excess[i])) {
                kelvinSteps += Math.max(0, excess[i]);
                peak = kind == Spell.Kind.WARM ? Math.max(peak, known[i]) : Math.min(peak, known[i]);
            }
        }
        int step = track.stepSeconds();
        long from = track.timeAt(run.from());
        Span span = new Span(from, from + (long) (run.until() - run.from()) * step);
        Span withEdges = new Span(from - step, span.untilExclusive() + step);
        boolean certain = true;
        for (Patch patch : history.patches()) {
            certain &= !patch.span().overlaps(withEdges);
        }
        return new Spell(kind, span, peak, kelvinSteps * step / 86_400.0, usedTo, certain, cause);
    }

    private int steps(double hours) {
        return (int) Math.round(hours * 3600 / history.track().stepSeconds());
    }

    private static int sign(Spell.Kind kind) {
        return kind == Spell.Kind.WARM ? 1 : -1;
    }

    private static double[] knownValues(BottleHistory history) {
        Track track = history.track();
        double[] values = new double[track.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = track.valueAt(i);
        }
        for (Patch patch : history.patches()) {
            if (patch.filling() == BottleHistory.Filling.UNKNOWN) {
                int until = patch.span().untilExclusive() > track.timeAt(values.length - 1)
                        ? values.length
                        : track.indexAt(patch.span().untilExclusive());
                for (int i = track.indexAt(patch.span().fromInclusive()); i < until; i++) {
                    values[i] = Double.NaN;
                }
            }
        }
        return values;
    }
}
