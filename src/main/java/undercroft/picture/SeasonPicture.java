package undercroft.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.outlook.lot.Alert;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.mark.TextStyle;
import undercroft.plot.scale.TickLadder;
import undercroft.plot.scale.TimeScale;
import undercroft.plot.scale.TimeTick;
import undercroft.plot.scale.ValueScale;
import undercroft.series.TimeSeries;
import undercroft.wording.ShelfWords;

/**
 * All batches on one axis of time, laid out: a lane for each place with its temperature and spells, and under it a row for
 * each of its lots. What is later than now is a forecast and drawn fainter. The same marks go to screen and paper; frames
 * tell where each row stands, for what a window puts beside it.
 */
public final class SeasonPicture {
    /**
     * Room for the parts, in pixels.
     *
     * @param names width of the column of names; 0 where the window writes them itself
     */
    public record Sizes(double names, double axis, double lane, double row) {
        /** As it is by itself. */
        public static final Sizes USUAL = new Sizes(176, 30, 26, 42);

        public Sizes {
            if (names < 0 || axis < 20 || lane < 16 || row < 30) {
                throw new IllegalArgumentException("a row needs at least 30 pixels, a lane 16, the axis 20");
            }
        }
    }

    private record Spot(Frame frame, SeasonRow row) {}

    private static final double RIGHT = 8;
    private static final double LEAST_WIDTH = 80;
    private static final double PIXELS_A_TICK = 64;
    private static final double PILL = 18;
    private static final double SPELL_OPACITY = 0.16;
    private static final double LANE_MARGIN = 5;
    private static final double LEAST_KELVIN = 10;

    private final Season season;
    private final Sizes sizes;
    private final double width;
    private final TextMeasure measure;
    private final ShelfWords words;
    private final TimeScale time;
    private final MarkList marks = new MarkList();
    private final List<Spot> spots = new ArrayList<>();
    private final List<Frame> lanes = new ArrayList<>();
    /** Written over the temperature, which is drawn over the shades. */
    private MarkList spellLabels = new MarkList();

    private SeasonPicture(
            Season season, long from, long until, double width, Sizes sizes, TextMeasure measure, ShelfWords words) {
        this.season = season;
        this.sizes = sizes;
        this.width = Math.floor(width);
        this.measure = measure;
        this.words = words;
        double left = Math.floor(sizes.names());
        this.time = new TimeScale(from, until, left, Math.max(left + LEAST_WIDTH, this.width - RIGHT));
    }

    /** Height it needs, in pixels. */
    public static double height(Season season, Sizes sizes) {
        int rows = season.lanes().stream().mapToInt(lane -> lane.rows().size()).sum();
        return sizes.axis() + season.lanes().size() * sizes.lane() + rows * sizes.row();
    }

    /** Lays it out over a stretch of time. */
    public static SeasonPicture of(
            Season season, long from, long until, double width, Sizes sizes, TextMeasure measure, ShelfWords words) {
        SeasonPicture picture = new SeasonPicture(season, from, until, width, sizes, measure, words);
        picture.axis();
        double y = sizes.axis();
        SeasonRowDrawing drawing = new SeasonRowDrawing(picture.time, season.now(), picture.marks, measure, words);
        for (Season.Lane lane : season.lanes()) {
            y = picture.lane(lane, y, drawing);
        }
        picture.now();
        return picture;
    }

    private double height() {
        return height(season, sizes);
    }

    private void axis() {
        int most = Math.max(2, (int) ((time.right() - time.left()) / PIXELS_A_TICK));
        for (TimeTick tick : TickLadder.ticks(
                time.from(),
                time.until(),
                season.zone(),
                words.format().messages().locale(),
                most)) {
            double x = Math.floor(time.xAt(tick.epochSecond())) + 0.5;
            marks.line(x, sizes.axis() - 4, x, height(), Stroke.of(tick.major() ? Role.FRAME : Role.GRID, 1));
            TextStyle style = tick.major() ? TextStyle.LABEL : TextStyle.TICK;
            double half = measure.width(tick.label(), style) / 2;
            double clear = isNowInView() ? half + pillWidth() / 2 + 6 - Math.abs(x - nowX()) : 0;
            // A new year beside now is worth a step aside; other labels give way.
            double aside = clear > 0 && tick.major() ? Math.copySign(clear, x - nowX()) : 0;
            if ((clear <= 0 || aside != 0) && x + aside - half >= time.left() - 4 && x + aside + half <= width) {
                marks.text(tick.label(), x + aside, sizes.axis() - 11, Anchor.MIDDLE, style, Role.FAINT_INK, false);
            }
        }
    }

    private boolean isNowInView() {
        return season.now() >= time.from() && season.now() <= time.until();
    }

    private double nowX() {
        return Math.floor(time.xAt(season.now())) + 0.5;
    }

    private double pillWidth() {
        return Math.ceil(measure.width(season.nowLabel(), TextStyle.LABEL)) + 14;
    }

    private void now() {
        if (!isNowInView()) {
            return;
        }
        double x = nowX();
        double pill = pillWidth();
        double left = Math.round(Math.max(time.left(), Math.min(width - pill, x - pill / 2)));
        double top = sizes.axis() - 7 - PILL;
        marks.line(x, top + PILL, x, height(), Stroke.of(Role.NOW, 1).withOpacity(0.85));
        marks.rect(new Frame(left, top, pill, PILL), 4, Role.NOW, 1);
        marks.text(season.nowLabel(), left + pill / 2, top + 13, Anchor.MIDDLE, TextStyle.LABEL, Role.PAPER, false);
    }

    private double lane(Season.Lane lane, double top, SeasonRowDrawing drawing) {
        Frame heading = new Frame(0, top, width, sizes.lane());
        lanes.add(heading);
        double bottom = top + sizes.lane() + lane.rows().size() * sizes.row();
        marks.line(0, top + 0.5, width, top + 0.5, Stroke.of(Role.FRAME, 1));
        spells(lane, top, bottom);
        temperature(lane, heading);
        spellLabels.all().forEach(marks::add);
        spellLabels = new MarkList();
        if (sizes.names() > 0) {
            String name = measure.fitted(lane.name(), TextStyle.TITLE, sizes.names() - 12);
            marks.text(name, 0, top + sizes.lane() / 2 + 5, Anchor.START, TextStyle.TITLE, Role.FAINT_INK, false);
        }
        double y = top + sizes.lane();
        for (SeasonRow row : lane.rows()) {
            Frame frame = new Frame(0, y, width, sizes.row());
            spots.add(new Spot(frame, row));
            marks.line(0, y + 0.5, width, y + 0.5, Stroke.of(Role.GRID, 1));
            if (sizes.names() > 0) {
                name(row, frame);
            }
            drawing.draw(row, new Frame(time.left(), y, time.right() - time.left(), sizes.row()));
            y += sizes.row();
        }
        return y;
    }

    private void name(SeasonRow row, Frame frame) {
        double sign = row.alert() == Alert.CLEAR ? 0 : 16;
        double middle = frame.y() + frame.height() / 2;
        String name = measure.fitted(row.name(), TextStyle.TITLE, sizes.names() - 14 - sign);
        marks.text(name, 0, middle - 2, Anchor.START, TextStyle.TITLE, Role.INK, false);
        String bottles = words.format().bottles(row.bottles());
        String below =
                row.alert() == Alert.CLEAR ? bottles : words.of("season.row.alert", words.nameOf(row.alert()), bottles);
        marks.text(
                measure.fitted(below, TextStyle.NOTE, sizes.names() - 14),
                0,
                middle + 14,
                Anchor.START,
                TextStyle.NOTE,
                row.alert() == Alert.CLEAR ? Role.FAINT_INK : AlertSigns.role(row.alert()),
                false);
        if (sign > 0) {
            AlertSigns.add(marks, row.alert(), sizes.names() - 16, middle - 6, 5);
        }
    }

    /** Shades them, and says of the warmest and of the coldest how far they went. */
    private void spells(Season.Lane lane, double top, double bottom) {
        List<SeasonSpell> seen = lane.spells().stream()
                .filter(spell -> spell.span().untilExclusive() > time.from()
                        && spell.span().fromInclusive() < time.until())
                .toList();
        Optional<SeasonSpell> warmest =
                seen.stream().filter(SeasonSpell::warm).max(Comparator.comparingDouble(SeasonSpell::peakCelsius));
        Optional<SeasonSpell> coldest =
                seen.stream().filter(spell -> !spell.warm()).min(Comparator.comparingDouble(SeasonSpell::peakCelsius));
        double free = time.left();
        for (SeasonSpell spell : seen) {
            double from = Math.round(Math.max(time.left(), time.xAt(spell.span().fromInclusive())));
            double until =
                    Math.round(Math.min(time.right(), time.xAt(spell.span().untilExclusive())));
            Role role = spell.warm() ? Role.SPELL : Role.ROOM;
            marks.rect(new Frame(from, top + 1, Math.max(2, until - from), bottom - top - 1), 0, role, SPELL_OPACITY);
            boolean told = warmest.filter(spell::equals).isPresent()
                    || coldest.filter(spell::equals).isPresent();
            double room = measure.width(spell.label(), TextStyle.TICK);
            double x = Math.max(until, from + 2) + 4;
            if (told && x >= free && x + room <= time.right()) {
                spellLabels.text(spell.label(), x, top + sizes.lane() - 7, Anchor.START, TextStyle.TICK, role, true);
                free = x + room + 6;
            }
        }
    }

    /** On one scale for all places, so that the coldest runs lowest; ahead it is a forecast. */
    private void temperature(Season.Lane lane, Frame heading) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Season.Lane each : season.lanes()) {
            TimeSeries celsius = each.celsius();
            int first = Math.max(0, celsius.indexAtOrBefore(time.from()));
            int last = celsius.indexAtOrBefore(time.until());
            if (first <= last) {
                low = Math.min(low, celsius.valueAt(celsius.lowestBetween(first, last)));
                high = Math.max(high, celsius.valueAt(celsius.highestBetween(first, last)));
            }
        }
        if (low > high) {
            return;
        }
        double margin = Math.max(0, LEAST_KELVIN - (high - low)) / 2;
        ValueScale scale = new ValueScale(
                low - margin, high + margin + 0.01, heading.y() + LANE_MARGIN, heading.bottom() - LANE_MARGIN);
        Points course = course(lane.celsius(), scale);
        Points past = course.between(time.left(), Math.min(time.right(), nowX()));
        Points ahead = course.between(Math.max(time.left(), nowX()), time.right());
        if (past.size() > 1) {
            marks.add(new Mark.Polyline(past, Stroke.of(Role.TEMPERATURE, 1.2)));
        }
        if (ahead.size() > 1) {
            marks.add(new Mark.Polyline(ahead, Stroke.of(Role.TEMPERATURE, 1).withOpacity(0.4)));
        }
    }

    private Points course(TimeSeries celsius, ValueScale scale) {
        Points.Builder course = new Points.Builder(celsius.size());
        for (int i = 0; i < celsius.size(); i++) {
            course.add(time.xAt(celsius.timeAt(i)), scale.yAt(celsius.valueAt(i)));
        }
        return course.build();
    }

    /** For a pen. */
    public Picture picture() {
        return new Picture(width, height(), marks.all(), time, List.of());
    }

    /** The row under a point. */
    public Optional<SeasonRow> at(double x, double y) {
        return spots.stream()
                .filter(spot -> spot.frame().contains(x, y))
                .map(Spot::row)
                .findFirst();
    }

    /** Where the row of a lot stands. */
    public Optional<Frame> frameOf(String batchId, String lotId) {
        return spots.stream()
                .filter(spot -> spot.row().batchId().equals(batchId)
                        && spot.row().lotId().equals(lotId))
                .map(Spot::frame)
                .findFirst();
    }

    /** Where the lane of each place stands, in the order of the season. */
    public List<Frame> lanes() {
        return List.copyOf(lanes);
    }
}
