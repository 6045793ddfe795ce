package undercroft.plot;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.scale.DayTicks;
import undercroft.plot.scale.TickLadder;
import undercroft.plot.scale.TimeTick;

/**
 * Plots from top to bottom that share one time axis.
 *
 * @param now instant of the now-line, in epoch seconds
 * @param nowLabel word on the now-line's foot
 * @param forecastFrom from here on nothing was measured: bands are drawn as a forecast, fainter and with a broken median;
 *     never later than now
 * @param days counts the days on the axis in place of dates
 */
public record PlotStack(
        List<Plot> plots,
        long from,
        long until,
        ZoneId zone,
        Locale locale,
        OptionalLong now,
        String nowLabel,
        OptionalLong forecastFrom,
        Optional<DayTicks> days) {
    public PlotStack {
        if (until <= from) {
            throw new IllegalArgumentException("a stack shows some time");
        }
        plots = List.copyOf(plots);
    }

    /** A stack without plots and without a now-line. */
    public static PlotStack of(long from, long until, ZoneId zone, Locale locale) {
        return new PlotStack(
                List.of(), from, until, zone, locale, OptionalLong.empty(), "", OptionalLong.empty(), Optional.empty());
    }

    public PlotStack with(Plot plot) {
        List<Plot> more = new ArrayList<>(plots);
        more.add(plot);
        return new PlotStack(more, from, until, zone, locale, now, nowLabel, forecastFrom, days);
    }

    public PlotStack withNow(long epochSecond, String label) {
        return new PlotStack(plots, from, until, zone, locale, OptionalLong.of(epochSecond), label, forecastFrom, days);
    }

    /** The last measurement lies at this instant: what is later is drawn as a forecast, even before now. */
    public PlotStack withForecastFrom(long epochSecond) {
        return new PlotStack(plots, from, until, zone, locale, now, nowLabel, OptionalLong.of(epochSecond), days);
    }

    /** The axis counts days from an instant, with a word before each number. */
    public PlotStack withDaysFrom(long epochSecond, String word) {
        return new PlotStack(
                plots,
                from,
                until,
                zone,
                locale,
                now,
                nowLabel,
                forecastFrom,
                Optional.of(new DayTicks(epochSecond, word)));
    }

    /** At most so many ticks of time. */
    List<TimeTick> ticks(int most) {
        return days.map(count -> count.ticks(from, until, most))
                .orElseGet(() -> TickLadder.ticks(from, until, zone, locale, most));
    }

    /** Where the forecast begins: after the last measurement, at the latest now; never without either. */
    long forecastBegin() {
        return Math.min(forecastFrom.orElse(Long.MAX_VALUE), now.orElse(Long.MAX_VALUE));
    }

    /** The same plots over another stretch of time. */
    public PlotStack over(long newFrom, long newUntil) {
        return new PlotStack(plots, newFrom, newUntil, zone, locale, now, nowLabel, forecastFrom, days);
    }

    /** Places everything in the given room; a picture without marks where the room is too small for any plot. */
    public Picture layout(double width, double height, TextMeasure measure) {
        return new StackLayout(this, width, height, measure).picture();
    }

    /** What each plot says at an instant, from top to bottom. */
    public List<Readout> valuesAt(long epochSecond) {
        return plots.stream().map(plot -> Readout.of(plot, epochSecond, locale)).toList();
    }
}
