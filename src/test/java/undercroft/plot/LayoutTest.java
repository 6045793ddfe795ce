package undercroft.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.scale.ValueScale;

class LayoutTest {
    private static final TextMeasure MEASURE = TextMeasure.rough();
    private static final Picture PICTURE = SamplePlots.stack("Carbonation, vol").layout(740, 480, MEASURE);

    private static <M extends Mark> List<M> marks(Picture picture, Class<M> kind) {
        return flat(picture).filter(kind::isInstance).map(kind::cast).toList();
    }

    private static Stream<Mark> flat(Picture picture) {
        return picture.marks().stream()
                .flatMap(mark -> mark instanceof Mark.Clipped clipped ? clipped.marks().stream() : Stream.of(mark));
    }

    private static List<Mark.Polyline> lines(Picture picture, Role role) {
        return marks(picture, Mark.Polyline.class).stream()
                .filter(line -> line.stroke().role() == role)
                .toList();
    }

    private static Mark.Text text(Picture picture, String words) {
        return marks(picture, Mark.Text.class).stream()
                .filter(text -> text.text().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static Frame box(Mark.Text text) {
        double width = MEASURE.width(text.text(), text.style());
        double size = text.style().sizePixels();
        return new Frame(text.anchor().leftOf(text.x(), width), text.y() - 0.8 * size, width, size);
    }

    /** A stack without a now-line: all of it is known. */
    @Test
    void theWideBandReachesFromLowToHighBehindTheNarrowOne() {
        PlotStack sample = SamplePlots.stack("Carbonation, vol");
        Picture known = PlotStack.of(sample.from(), sample.until(), sample.zone(), sample.locale())
                .with(sample.plots().get(0))
                .layout(740, 480, MEASURE);
        List<Mark.Polygon> areas = areas(known);
        assertEquals(2, areas.size());
        ValueScale values = known.areas().get(0).values();
        Points wide = areas.get(0).points();
        Points narrow = areas.get(1).points();
        assertEquals(202, wide.size());
        for (int i = 0; i <= 100; i++) {
            double median = 2 * (1 - Math.exp(-i / 15.0)) + 0.5;
            assertEquals(values.yAt(median + 0.2), wide.y(i), 1e-6);
            assertEquals(values.yAt(median - 0.2), wide.y(201 - i), 1e-6);
            assertEquals(values.yAt(median + 0.08), narrow.y(i), 1e-6);
            assertEquals(wide.x(i), wide.x(201 - i));
        }
    }

    private static List<Mark.Polygon> areas(Picture picture) {
        return marks(picture, Mark.Polygon.class).stream()
                .filter(area -> area.role() == Role.CARBONATION)
                .toList();
    }

    @Test
    void theMedianIsWholeBeforeNowAndDashedAfterAndTheBandFainter() {
        assertForecastBegins(PICTURE, PICTURE.time().xAt(SamplePlots.NOW));
    }

    @Test
    void whatIsLaterThanTheLastMeasurementIsAForecastEvenBeforeNow() {
        long last = SamplePlots.NOW - 5 * 86_400;
        Picture picture =
                SamplePlots.stack("Carbonation, vol").withForecastFrom(last).layout(740, 480, MEASURE);
        assertForecastBegins(picture, picture.time().xAt(last));
        Picture later = SamplePlots.stack("Carbonation, vol")
                .withForecastFrom(SamplePlots.NOW + 86_400)
                .layout(740, 480, MEASURE);
        assertForecastBegins(later, later.time().xAt(SamplePlots.NOW));
    }

    /** Within half a pixel, so that the seam between the two fills is sharp. */
    private static void assertForecastBegins(Picture picture, double x) {
        List<Mark.Polyline> median = lines(picture, Role.CARBONATION);
        assertEquals(2, median.size());
        Points past = median.get(0).points();
        assertEquals(Dash.SOLID, median.get(0).stroke().dash());
        assertEquals(x, past.x(past.size() - 1), 0.5);
        assertEquals(x, median.get(1).points().x(0), 0.5);
        assertFalse(median.get(1).stroke().dash() == Dash.SOLID);
        List<Mark.Polygon> areas = areas(picture);
        assertEquals(4, areas.size());
        for (int i = 0; i < 4; i += 2) {
            assertTrue(areas.get(i + 1).opacity() < areas.get(i).opacity());
            assertEquals(x, areas.get(i + 1).points().x(0), 0.5);
        }
    }

    @Test
    void aGapBreaksTheLineAndNothingIsDrawnInIt() {
        List<Mark.Polyline> lines = lines(PICTURE, Role.TEMPERATURE);
        assertEquals(2, lines.size());
        Points before = lines.get(0).points();
        assertEquals(PICTURE.time().xAt(SamplePlots.GAP_BEGIN), before.x(before.size() - 1), 1e-6);
        assertEquals(
                PICTURE.time().xAt(SamplePlots.GAP_END), lines.get(1).points().x(0), 1e-6);
    }

    @Test
    void theLimitLiesAtItsValueWithItsLabelBesideItInTheFrame() {
        Picture.PlotArea pressure = PICTURE.areas().get(1);
        Points limit = lines(PICTURE, Role.LIMIT).get(0).points();
        assertEquals(pressure.values().yAt(4.7), limit.y(0), 1e-9);
        Mark.Text label = text(PICTURE, "working limit 4.7");
        assertTrue(pressure.frame().contains(box(label)));
        assertTrue(Math.abs(label.y() - limit.y(0)) < 20);
    }

    @Test
    void aShortSpellInTheLightIsAsTallAsItsDoseAndAsLongAsItLasted() {
        Points top = lines(PICTURE, Role.LIGHT).get(0).points();
        ValueScale values = PICTURE.areas().get(3).values();
        int tall = 0;
        while (Math.abs(top.y(tall) - values.yAt(2.5)) > 1e-9) {
            tall++;
        }
        assertEquals(PICTURE.time().xAt(SamplePlots.FROM + 10 * SamplePlots.DAY), top.x(tall), 1e-6);
        assertEquals(PICTURE.time().xAt(SamplePlots.FROM + 11 * SamplePlots.DAY), top.x(tall + 1), 1e-6);
    }

    @Property(tries = 150, seed = "20260104")
    void textsDoNotTouchOneAnother(
            @ForAll @IntRange(min = 200, max = 1400) int width,
            @ForAll @IntRange(min = 230, max = 900) int height,
            @ForAll @LongRange(min = -50, max = 90) long fromDays,
            @ForAll @LongRange(min = 3600, max = 400 * 86_400L) long seconds) {
        long from = SamplePlots.FROM + fromDays * SamplePlots.DAY;
        Picture picture =
                SamplePlots.stack("Carbonation, vol").over(from, from + seconds).layout(width, height, MEASURE);
        List<Mark.Text> texts = marks(picture, Mark.Text.class);
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertFalse(box(texts.get(i)).overlaps(box(texts.get(j))), texts.get(i) + " " + texts.get(j));
            }
        }
        assertFalse(texts.isEmpty());
    }

    @Test
    void aLabelWithoutRoomIsLeftOut() {
        Picture narrow = SamplePlots.stack("Carbonation, vol").layout(120, 480, MEASURE);
        assertTrue(marks(narrow, Mark.Text.class).stream()
                .noneMatch(text -> text.text().equals("working limit 4.7")));
        assertFalse(lines(narrow, Role.LIMIT).isEmpty());
    }

    @Test
    void plotsShareTheHeightByTheirWeights() {
        List<Picture.PlotArea> areas = PICTURE.areas();
        double whole = areas.get(0).frame().height();
        assertEquals(whole, areas.get(1).frame().height());
        assertEquals(0.4 * whole, areas.get(3).frame().height(), 1);
        for (Picture.PlotArea area : areas) {
            assertEquals(areas.get(0).frame().x(), area.frame().x());
            assertEquals(areas.get(0).frame().right(), area.frame().right());
        }
    }

    @Test
    void theNowLineCrossesEveryPlotAndTellsItsNameBelow() {
        double x = PICTURE.time().xAt(SamplePlots.NOW);
        List<Mark.Polyline> now = lines(PICTURE, Role.NOW);
        assertEquals(5, now.size());
        now.forEach(line -> assertEquals(x, line.points().x(0), 1));
        assertEquals(x, text(PICTURE, "now").x(), 2);
        Picture before = SamplePlots.stack("C")
                .over(SamplePlots.FROM, SamplePlots.FROM + 10 * SamplePlots.DAY)
                .layout(740, 480, MEASURE);
        assertTrue(lines(before, Role.NOW).isEmpty());
    }

    @Property(tries = 150, seed = "20260104")
    void everythingLiesOnThePictureAtEverySizeAndStretch(
            @ForAll @IntRange(min = 0, max = 1400) int width,
            @ForAll @IntRange(min = 0, max = 900) int height,
            @ForAll @LongRange(min = -200, max = 200) long fromDays,
            @ForAll @LongRange(min = 60, max = 400 * 86_400L) long seconds) {
        long from = SamplePlots.FROM + fromDays * SamplePlots.DAY;
        PlotStack stack = SamplePlots.stack("Carbonation, vol").over(from, from + seconds);
        Picture picture = stack.layout(width, height, MEASURE);
        Frame whole = new Frame(0, 0, Math.max(width, 1), height);
        for (Mark mark : picture.marks()) {
            if (mark instanceof Mark.Clipped clipped) {
                assertTrue(whole.contains(clipped.frame()));
                clipped.marks().forEach(inner -> assertBetween(inner, clipped.frame()));
            } else if (mark instanceof Mark.Polyline line) {
                for (int i = 0; i < line.points().size(); i++) {
                    assertTrue(whole.contains(line.points().x(i), line.points().y(i)));
                }
            } else if (mark instanceof Mark.Rect rect) {
                assertTrue(whole.contains(rect.frame()));
            } else if (mark instanceof Mark.Text text) {
                assertTrue(whole.contains(box(text)), text.toString());
            }
        }
    }

    /** Within the clip from left to right; up and down a line may leave it when its axis is fixed. */
    private static void assertBetween(Mark mark, Frame frame) {
        Points points = mark instanceof Mark.Polyline line
                ? line.points()
                : mark instanceof Mark.Polygon area ? area.points() : Points.of();
        for (int i = 0; i < points.size(); i++) {
            assertTrue(points.x(i) >= frame.x() - 10 && points.x(i) <= frame.right() + 10);
            assertTrue(points.y(i) >= frame.y() - 1e-6 && points.y(i) <= frame.bottom() + 1e-6, "y " + points.y(i));
        }
    }

    @Test
    void aTitleLongerThanItsPlotIsCutShort() {
        String name =
                "A name that goes on and on \uD83C\uDF7A\uD83C\uDF7A\uD83C\uDF7A\uD83C\uDF7A\uD83C\uDF7A\uD83C\uDF7A";
        Picture picture = SamplePlots.stack(name).layout(250, 480, MEASURE);
        Mark.Text title = marks(picture, Mark.Text.class).get(0);
        assertTrue(
                title.text().startsWith("A name that goes on") && title.text().endsWith("…"), title.text());
        assertTrue(box(title).right() <= picture.areas().get(0).frame().right());
    }

    @Test
    void theSteadyValueOfAQuietRoomDoesNotLookRestless() {
        ValueAxis axis = ValueAxis.auto("°C", 1).withSmallestSpan(5);
        Plot plot = Plot.of(
                "T", axis, new ThresholdLayer(17.20, Role.LIMIT, ""), new ThresholdLayer(17.23, Role.LIMIT, ""));
        double[] range = ValueReach.of(plot, 0, 10);
        assertEquals(5, range[1] - range[0], 1e-9);
        assertEquals(17.215, (range[0] + range[1]) / 2, 1e-9);
    }
}
