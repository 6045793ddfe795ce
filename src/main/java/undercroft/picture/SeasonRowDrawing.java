package undercroft.picture;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.mark.TextStyle;
import undercroft.plot.scale.TimeScale;
import undercroft.series.TimeSeries;
import undercroft.wording.ShelfWords;

/**
 * Draws the rows of a season: above, what becomes of the beer (a wedge as it carbonates, a pale block while it clears, green
 * while it is ready, a dashed frame past its best); below, the bottles that are left. Each word stands once, on the first row
 * with room for it.
 */
final class SeasonRowDrawing {
    private static final double PAST = 1;
    /** What is not yet is drawn with this share of its strength. */
    private static final double AHEAD = 0.55;

    private static final double BAR_TOP = 0.14;
    private static final double BAR = 0.36;
    private static final double BRACKET = 0.6;
    private static final double STOCK_FOOT = 0.93;
    private static final double STOCK = 0.3;
    private static final long SOON = 30L * 86_400;
    private static final double CAP = 3;
    private static final double GAP = 5;

    /** The words that explain the picture where they first fit. */
    private enum Word {
        CARBONATING,
        CLEARING,
        READY,
        PAST_BEST,
        LEFT,
        READY_DATE
    }

    private final TimeScale time;
    private final long now;
    private final MarkList marks;
    private final TextMeasure measure;
    private final ShelfWords words;
    private final Set<Word> said = EnumSet.noneOf(Word.class);
    private final List<Frame> taken = new ArrayList<>();

    SeasonRowDrawing(TimeScale time, long now, MarkList marks, TextMeasure measure, ShelfWords words) {
        this.time = time;
        this.now = now;
        this.marks = marks;
        this.measure = measure;
        this.words = words;
    }

    void draw(SeasonRow row, Frame frame) {
        taken.clear();
        double barTop = Math.round(frame.y() + BAR_TOP * frame.height());
        Frame bar = new Frame(frame.x(), barTop, frame.width(), Math.round(BAR * frame.height()));
        MarkList clipped = new MarkList();
        wedge(row, bar, clipped);
        long ready = row.ready().orElse(Long.MAX_VALUE);
        block(
                clipped,
                bar,
                row.carbonated(),
                ready == Long.MAX_VALUE ? row.carbonated() : ready,
                Role.CARBONATION,
                0.3);
        readyBlock(row, bar, clipped);
        stock(row, frame, clipped);
        bracket(row, frame, clipped);
        marks.add(new Mark.Clipped(frame, clipped.all()));
        bursts(row, frame);
        servings(row, frame);
        bestBefore(row, bar, frame);
        explain(row, bar, frame);
    }

    private double x(long second) {
        return Math.round(Math.max(time.left(), Math.min(time.right(), time.xAt(second))));
    }

    /** The course of its carbonation, filled from below. */
    private void wedge(SeasonRow row, Frame bar, MarkList into) {
        TimeSeries fraction = row.fraction();
        Points.Builder top = new Points.Builder(fraction.size());
        for (int i = 0; i < fraction.size() && fraction.timeAt(i) <= row.carbonated(); i++) {
            top.add(time.xAt(fraction.timeAt(i)), bar.bottom() - fraction.valueAt(i) * bar.height());
        }
        Points course = top.build();
        double nowX = x(now);
        fill(course.between(time.left(), nowX), bar, 0.85 * PAST, into);
        fill(course.between(nowX, time.right()), bar, 0.85 * AHEAD, into);
    }

    private static void fill(Points course, Frame bar, double opacity, MarkList into) {
        if (course.size() > 1) {
            Points foot = Points.of(course.x(0), bar.bottom(), course.x(course.size() - 1), bar.bottom());
            into.add(new Mark.Polygon(course.backOver(foot), Role.CARBONATION, opacity));
        }
    }

    private void block(MarkList into, Frame bar, long from, long until, Role role, double opacity) {
        part(into, bar, from, Math.min(until, now), role, opacity * PAST);
        part(into, bar, Math.max(from, now), until, role, opacity * AHEAD);
    }

    private void part(MarkList into, Frame bar, long from, long until, Role role, double opacity) {
        if (until > from && until > time.from() && from < time.until()) {
            into.rect(new Frame(x(from), bar.y(), x(until) - x(from), bar.height()), 0, role, opacity);
        }
    }

    private void readyBlock(SeasonRow row, Frame bar, MarkList into) {
        if (row.ready().isEmpty()) {
            return;
        }
        long ready = row.ready().getAsLong();
        long best = row.bestBefore().orElse(time.until());
        block(into, bar, ready, best, Role.READY, 0.3);
        edge(into, bar, ready, Math.min(best, now), Stroke.of(Role.READY, 2));
        edge(into, bar, Math.max(ready, now), best, Stroke.of(Role.READY, 1.5).with(Dash.LONG));
        long end = pastBestEnd(row);
        if (end > best && best < time.until() && end > time.from()) {
            double left = x(Math.max(best, ready)) + 0.5;
            Frame past = new Frame(left, bar.y() + 0.5, Math.max(1, x(end) - left), bar.height() - 1);
            into.rect(past, 0, Role.AGE, best < now ? 0.16 : 0.08);
            into.outline(past, Stroke.of(Role.AGE, 1).with(Dash.DASHED));
        }
    }

    /** Shown for what is past its best or soon will be; for all others it would only be noise. */
    private long pastBestEnd(SeasonRow row) {
        boolean soon = row.bestBefore().isPresent() && row.bestBefore().getAsLong() < now + SOON;
        return soon ? Math.max(row.end(), now) : Long.MIN_VALUE;
    }

    private void edge(MarkList into, Frame bar, long from, long until, Stroke stroke) {
        if (until > from && until > time.from() && from < time.until()) {
            into.line(x(from), bar.y() + 1, x(until), bar.y() + 1, stroke);
        }
    }

    private void stock(SeasonRow row, Frame frame, MarkList into) {
        double foot = Math.round(frame.y() + STOCK_FOOT * frame.height());
        double most = STOCK * frame.height();
        TimeSeries left = row.left();
        for (int i = 0; i < left.size(); i++) {
            long until = i + 1 < left.size() ? left.timeAt(i + 1) : now;
            double height = left.valueAt(i) * most;
            if (until > time.from() && left.timeAt(i) < time.until() && height > 0) {
                double from = x(left.timeAt(i));
                into.rect(new Frame(from, foot - height, x(until) - from, height), 0, Role.AGE, 0.4);
            }
        }
    }

    private void bursts(SeasonRow row, Frame frame) {
        double middle = Math.round(frame.y() + (STOCK_FOOT - STOCK / 2) * frame.height());
        for (long burst : row.bursts()) {
            double at = time.xAt(burst);
            if (at >= time.left() && at <= time.right()) {
                Stroke stroke = Stroke.of(Role.LIMIT, 2);
                marks.line(at - 4, middle - 4, at + 4, middle + 4, stroke);
                marks.line(at - 4, middle + 4, at + 4, middle - 4, stroke);
                taken.add(new Frame(at - 7, middle - 7, 14, 14));
            }
        }
    }

    private void bracket(SeasonRow row, Frame frame, MarkList into) {
        if (row.readyEarly().isEmpty()) {
            return;
        }
        double y = Math.round(frame.y() + BRACKET * frame.height()) + 0.5;
        double early = time.xAt(row.readyEarly().getAsLong());
        double late = row.readyLate().isPresent() ? time.xAt(row.readyLate().getAsLong()) : time.right() + CAP;
        Stroke stroke = Stroke.of(Role.INK, 1);
        into.line(early, y, late, y, stroke);
        into.line(early, y - CAP, early, y + CAP, stroke);
        into.line(late, y - CAP, late, y + CAP, stroke);
    }

    private void bestBefore(SeasonRow row, Frame bar, Frame frame) {
        double baseline = bar.bottom() - (bar.height() - 8) / 2;
        if (row.ready().isEmpty()) {
            double x = Math.max(x(row.carbonated()), x(now)) + GAP;
            if (!say(words.of("season.never"), x, baseline, Anchor.START, Role.FAINT_INK)) {
                say(words.of("season.never"), time.right(), foot(frame), Anchor.END, Role.FAINT_INK);
            }
            return;
        }
        boolean beyond = row.bestBefore().isEmpty() || row.bestBefore().getAsLong() > time.until();
        String label = row.bestBeforeLabel().isEmpty() ? words.of("season.keeps") : row.bestBeforeLabel();
        String shown = beyond ? words.of("season.beyond", label) : label;
        double room = measure.width(shown, TextStyle.TICK);
        double end = beyond ? time.right() : x(row.bestBefore().getAsLong());
        double begin = x(Math.max(row.ready().getAsLong(), time.from()));
        boolean across = x(now) > end - GAP - room - GAP && x(now) < end;
        boolean inside =
                !across && end - begin > room + 2 * GAP && say(shown, end - GAP, baseline, Anchor.END, Role.INK);
        double after = Math.max(x(Math.max(pastBestEnd(row), row.bestBefore().orElse(0))), end) + GAP;
        if (!inside && !say(shown, after, baseline, Anchor.START, Role.INK)) {
            say(shown, end, foot(frame), Anchor.END, Role.INK);
        }
    }

    private static double foot(Frame frame) {
        return Math.round(frame.y() + STOCK_FOOT * frame.height()) - 2;
    }

    private void explain(SeasonRow row, Frame bar, Frame frame) {
        double baseline = bar.bottom() - (bar.height() - 8) / 2;
        long ready = row.ready().orElse(row.carbonated());
        inside(Word.CARBONATING, "season.carbonating", row.capped(), row.carbonated(), bar.y() + 6, Role.CARBONATION);
        inside(Word.CLEARING, "season.clearing", row.carbonated(), ready, baseline, Role.CARBONATION);
        if (row.ready().isPresent()) {
            long best = row.bestBefore().orElse(time.until());
            inside(Word.READY, "season.ready", ready, Math.min(best, now), baseline, Role.READY);
            inside(Word.PAST_BEST, "season.past-best", best, pastBestEnd(row), baseline, Role.AGE);
        }
        inside(Word.LEFT, "season.left", row.capped(), now, foot(frame), Role.FAINT_INK);
        if (!said.contains(Word.READY_DATE) && row.readyLate().isPresent()) {
            double y = Math.round(frame.y() + BRACKET * frame.height()) + 4;
            double at = time.xAt(row.readyLate().getAsLong()) + CAP + GAP;
            if (at > time.left() && say(words.of("season.ready-date"), at, y, Anchor.START, Role.FAINT_INK)) {
                said.add(Word.READY_DATE);
            }
        }
    }

    private void inside(Word word, String key, long from, long until, double baseline, Role role) {
        if (said.contains(word) || until <= from) {
            return;
        }
        String text = words.of(key);
        double left = x(from) + GAP;
        if (x(until) - left >= measure.width(text, TextStyle.LABEL) + GAP
                && say(text, left, baseline, Anchor.START, role)) {
            said.add(word);
        }
    }

    private void servings(SeasonRow row, Frame frame) {
        double middle = Math.round(frame.y() + (STOCK_FOOT - STOCK / 2) * frame.height());
        for (SeasonRow.Glass glass : row.servings()) {
            double at = time.xAt(glass.at());
            if (at < time.left() || at > time.right() - 8) {
                continue;
            }
            Points shape =
                    Points.of(at - 4, middle - 6, at + 4, middle - 6, at + 2.5, middle + 5, at - 2.5, middle + 5);
            marks.add(new Mark.Polygon(shape, Role.CARBONATION, 1));
            say(words.format().number(glass.bottles(), 0), at + 7, middle + 4, Anchor.START, Role.CARBONATION);
            taken.add(new Frame(at - 6, middle - 7, 12, 14));
        }
    }

    /** Writes a text where it lies on the picture and on no other of its row. */
    private boolean say(String text, double x, double baseline, Anchor anchor, Role role) {
        TextStyle style = TextStyle.TICK;
        double room = measure.width(text, style);
        double left = anchor.leftOf(x, room);
        Frame box = new Frame(left, baseline - 9, room, 11);
        boolean seen = left >= time.left()
                && box.right() <= time.right()
                && taken.stream().noneMatch(box::overlaps);
        if (seen) {
            taken.add(new Frame(left - 3, box.y(), room + 6, box.height()));
            marks.text(text, x, baseline, anchor, style, role, true);
        }
        return seen;
    }
}
