package undercroft.wording;

import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAccessor;
import undercroft.calc.light.TimeOrder;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Mass;
import undercroft.quantity.Phrase;
import undercroft.quantity.UnitSystem;

/**
 * Quantities and dates as a person reads them: in one language, one system of units, one zone. Every value is converted
 * first and rounded then. What must not be passed (a {@code Limit}) is rounded down, what may come at worst (a
 * {@code Worst}, and the ends of a range) is rounded away from the middle, so that no figure is more hopeful than what it
 * was made from.
 */
public final class QuantityFormat {
    /** Heat limits are looked for up to here, °C. */
    private static final double WARMEST_LIMIT_CELSIUS = 60;

    private static final RoundingMode DOWN = RoundingMode.FLOOR;
    private static final RoundingMode UP = RoundingMode.CEILING;
    private static final RoundingMode NEAREST = RoundingMode.HALF_UP;

    private final Messages messages;
    private final UnitSystem units;
    private final ZoneId zone;
    private final Figures figures;

    private QuantityFormat(Messages messages, UnitSystem units, ZoneId zone) {
        this.messages = messages;
        this.units = units;
        this.zone = zone;
        this.figures = new Figures(messages.locale());
    }

    public static QuantityFormat of(Messages messages, UnitSystem units, ZoneId zone) {
        return new QuantityFormat(messages, units, zone);
    }

    public Messages messages() {
        return messages;
    }

    public UnitSystem units() {
        return units;
    }

    public ZoneId zone() {
        return zone;
    }

    /** The sentence with that key; see {@link Messages#of}. */
    public String of(String key, Object... arguments) {
        return messages.of(key, arguments);
    }

    /** A phrase from a room below, quantities in it in these units. */
    public String of(Phrase phrase) {
        return messages.of(phrase, units);
    }

    /** The same fault with the quantities that it names in words, in these units. */
    public InvalidInput worded(InvalidInput fault) {
        return QuantityArgument.worded(fault, this);
    }

    /** What is wrong and what to do, without the place; quantities in it in these units. */
    public String what(InvalidInput fault) {
        return of(fault.phrase());
    }

    /** {@code 17.2 °C} or {@code 63 °F}. */
    public String celsius(double celsius) {
        return said(ShownUnit.temperature(units), celsius, NEAREST);
    }

    /** A temperature someone set: {@code 20 °C}, {@code 17.5 °C} or {@code 68 °F}. */
    public String statedCelsius(double celsius) {
        return isUs() ? celsius(celsius) : of(ShownUnit.CELSIUS.key(), figures.lean(celsius, 1));
    }

    /** {@code 17 °C} or {@code 63 °F}, where a tenth would only be noise. */
    public String wholeCelsius(double celsius) {
        return said(ShownUnit.wholeTemperature(units), celsius, NEAREST);
    }

    /** A temperature not to be passed: the whole degree below. */
    public String celsiusLimit(double celsius) {
        return said(ShownUnit.wholeTemperature(units), celsius, DOWN);
    }

    /**
     * The warmest storage of a bottle, °C: rounded down; infinite where none was found up to 60 °C, below zero where it is
     * passed even in the cold.
     */
    public String heatLimit(double celsius) {
        if (Double.isInfinite(celsius)) {
            return of("quantity.heat-limit.beyond", celsiusLimit(WARMEST_LIMIT_CELSIUS));
        }
        return celsius < 0 ? of("quantity.heat-limit.passed") : celsiusLimit(celsius);
    }

    /** The warmest it may have been: a tenth of a degree Celsius, or a degree Fahrenheit, rounded up. */
    public String celsiusWorst(double celsius) {
        return said(ShownUnit.temperature(units), celsius, UP);
    }

    /** A difference of temperatures: {@code 3.0 °C} or {@code 5 °F}. */
    public String kelvin(double kelvin) {
        return said(isUs() ? ShownUnit.FAHRENHEIT_STEP : ShownUnit.KELVIN, kelvin, NEAREST);
    }

    /** The unit pressures are shown in, for an axis. */
    public String pressureUnit() {
        return unit(ShownUnit.pressure(units));
    }

    /** A pressure in the unit shown, for an axis. */
    public double shownBar(double bar) {
        return ShownUnit.pressure(units).from().applyAsDouble(bar);
    }

    /** The unit temperatures are shown in, for an axis. */
    public String temperatureUnit() {
        return unit(ShownUnit.temperature(units));
    }

    /** {@code 2.4 bar} or {@code 35 psi}. */
    public String bar(double bar) {
        return said(ShownUnit.pressure(units), bar, NEAREST);
    }

    /** A pressure not to be passed. */
    public String barLimit(double bar) {
        return said(ShownUnit.pressure(units), bar, DOWN);
    }

    /** A pressure that may come. */
    public String barWorst(double bar) {
        return said(ShownUnit.pressure(units), bar, UP);
    }

    /** {@code 2.2 bar (2.0 to 2.5)}. */
    public String bars(Interval bar) {
        return around(ShownUnit.pressure(units), bar);
    }

    /** {@code 2.0 to 2.5 bar}. */
    public String barRange(Interval bar) {
        return range(ShownUnit.pressure(units), bar);
    }

    /** {@code 2.4 vol}, in both systems, as the trade has it. */
    public String volumes(double volumes) {
        return said(ShownUnit.VOLUMES, volumes, NEAREST);
    }

    /** A carbonation someone set: {@code 2.4 vol} or {@code 2.45 vol}. */
    public String statedVolumes(double volumes) {
        return of(ShownUnit.VOLUMES.key(), figures.number(volumes, 1, 2));
    }

    /** A carbonation not to be passed. */
    public String volumesLimit(double volumes) {
        return said(ShownUnit.VOLUMES, volumes, DOWN);
    }

    /** {@code 2.43 vol}: for figures that are added up. */
    public String fineVolumes(double volumes) {
        return said(ShownUnit.FINE_VOLUMES, volumes, NEAREST);
    }

    /** The span that nine of ten lie in, then the middle: {@code 2.21 to 2.62, about 2.40 vol}. */
    public String volumesAbout(Interval volumes) {
        return of(
                "quantity.volumes-about",
                figure(ShownUnit.FINE_VOLUMES, volumes.low(), DOWN),
                figure(ShownUnit.FINE_VOLUMES, volumes.high(), UP),
                figure(ShownUnit.FINE_VOLUMES, volumes.median(), NEAREST));
    }

    /** {@code 2.3 vol (2.1 to 2.6)}. */
    public String volumes(Interval volumes) {
        return around(ShownUnit.VOLUMES, volumes);
    }

    /** {@code 2.1 to 2.6 vol}. */
    public String volumeRange(Interval volumes) {
        return range(ShownUnit.VOLUMES, volumes);
    }

    /** Litres from one up, else millilitres; gallons from one up, else fluid ounces. */
    public String litres(double litres) {
        if (isUs()) {
            return said(
                    ShownUnit.GALLONS.from().applyAsDouble(litres) >= 1 ? ShownUnit.GALLONS : ShownUnit.FLUID_OUNCES,
                    litres,
                    NEAREST);
        }
        return said(litres >= 1 ? ShownUnit.LITRES : ShownUnit.MILLILITRES, litres, NEAREST);
    }

    public String millilitres(double millilitres) {
        return said(isUs() ? ShownUnit.FLUID_OUNCES : ShownUnit.MILLILITRES, millilitres / 1000, NEAREST);
    }

    /** {@code 118 g}, {@code 4.2 g} or {@code 4.2 oz}. */
    public String grams(double grams) {
        return said(
                isUs() ? ShownUnit.OUNCES : grams < 10 ? ShownUnit.TENTHS_OF_GRAMS : ShownUnit.GRAMS, grams, NEAREST);
    }

    /** Both units at once, as scales have either: {@code 118.3 g (4.17 oz)}. */
    public String weighed(double grams) {
        return of(
                "quantity.weighed",
                figures.number(grams, grams < 10 ? 2 : 1),
                figures.number(Mass.ofGrams(grams).ounces(), 2));
    }

    /** {@code 6.21 g/L}, or ounces to the US gallon. */
    public String gramsPerLitre(double gramsPerLitre) {
        return said(isUs() ? ShownUnit.OUNCES_A_GALLON : ShownUnit.GRAMS_A_LITRE, gramsPerLitre, NEAREST);
    }

    /** {@code 1.012}. */
    public String gravity(double specific) {
        return figures.number(specific, 3);
    }

    /** {@code 57 %}; neither 0 nor 100 unless it is just that. */
    public String percent(double share) {
        long rounded = Math.round(100 * share);
        long shown = share > 0 && rounded == 0 ? 1 : share < 1 && rounded == 100 ? 99 : rounded;
        return of("quantity.percent", figures.count(shown));
    }

    /** A bare number. */
    public String number(double value, int decimals) {
        return figures.number(value, decimals);
    }

    /** A bare number rounded down. */
    public String numberDown(double value, int decimals) {
        return figures.number(value, decimals, DOWN);
    }

    /** A bare number rounded up. */
    public String numberUp(double value, int decimals) {
        return figures.number(value, decimals, UP);
    }

    /** A bare number without idle zeros, as a field shows it. */
    public String lean(double value, int decimals) {
        return figures.lean(value, decimals);
    }

    /** {@code 2.1 to 2.5}, or one number when both ends read the same. */
    public String range(Interval interval, int decimals) {
        return fromTo(numberDown(interval.low(), decimals), numberUp(interval.high(), decimals));
    }

    /** {@code minutes to hours}: a span of time too uncertain for digits. */
    public String timeOrders(double fromHours, double toHours) {
        return fromTo(messages.nameOf(TimeOrder.ofHours(fromHours)), messages.nameOf(TimeOrder.ofHours(toHours)));
    }

    /** {@code 1 bottle}, {@code 24 bottles}. */
    public String bottles(long count) {
        return of("count.bottles", count);
    }

    public LocalDate date(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }

    /** {@code 12 November}, with its year when that is not the year seen from. */
    public String day(LocalDate date, Instant seenFrom) {
        return written(date.getYear() == date(seenFrom).getYear() ? "date.day" : "date.day-and-year", date);
    }

    public String day(Instant instant, Instant seenFrom) {
        return day(date(instant), seenFrom);
    }

    /** {@code 12 November 2026}. */
    public String day(LocalDate date) {
        return written("date.day-and-year", date);
    }

    /** {@code 12 Nov 2026}, where there is little room. */
    public String shortDay(LocalDate date) {
        return written("date.short-day-and-year", date);
    }

    /** {@code 12 November, 18:30}. */
    public String dayAndTime(Instant instant, Instant seenFrom) {
        return of("date.joint", day(instant, seenFrom), clock(instant));
    }

    /** {@code 12 November 2026, 18:30}. */
    public String dayAndTime(Instant instant) {
        return of("date.joint", day(date(instant)), clock(instant));
    }

    /** {@code Saturday 21 November 2026, 18:00}. */
    public String full(Instant instant) {
        return of("date.joint", written("date.weekday-and-day", instant.atZone(zone)), clock(instant));
    }

    /** {@code Friday 19:30}: a moment within the coming days. */
    public String weekdayAndTime(Instant instant) {
        return written("date.weekday-and-time", instant.atZone(zone));
    }

    /** {@code 18:30}. */
    public String clock(Instant instant) {
        return written("date.clock", instant.atZone(zone));
    }

    /** {@code Mar 2027}. */
    public String month(LocalDate date) {
        return written("date.month", date);
    }

    /** {@code 8 to 17 August}; both months where they differ. */
    public String days(Instant from, Instant until, Instant seenFrom) {
        LocalDate first = date(from);
        LocalDate last = date(until);
        boolean sameMonth = first.getYear() == last.getYear() && first.getMonth() == last.getMonth();
        String begin = sameMonth ? written("date.day-of-month", first) : day(first, seenFrom);
        return first.equals(last) ? day(first, seenFrom) : of("quantity.range", begin, day(last, seenFrom));
    }

    /** How a person says when: now, today 19:30, tomorrow 08:00, Saturday 18:00, 12 December. */
    public String when(Instant instant, Instant seenFrom) {
        if (!instant.isAfter(seenFrom)) {
            return of("date.now");
        }
        ZonedDateTime local = instant.atZone(zone);
        long days = ChronoUnit.DAYS.between(date(seenFrom), local.toLocalDate());
        if (days < 2) {
            return of(days == 0 ? "date.today" : "date.tomorrow", clock(instant));
        }
        return days < 7 ? weekdayAndTime(instant) : day(instant, seenFrom);
    }

    /** A date or time in any of the patterns of the bundle {@code date}. */
    private String written(String patternKey, TemporalAccessor time) {
        return DateTimeFormatter.ofPattern(of(patternKey), messages.locale()).format(time);
    }

    private boolean isUs() {
        return units == UnitSystem.US;
    }

    private String unit(ShownUnit unit) {
        return of(unit.key(), "").strip();
    }

    private String said(ShownUnit unit, double kept, RoundingMode rounding) {
        return of(unit.key(), figure(unit, kept, rounding));
    }

    private String figure(ShownUnit unit, double kept, RoundingMode rounding) {
        double shown = Double.isFinite(kept) ? unit.from().applyAsDouble(kept) : kept;
        return figures.number(shown, unit.decimals(), rounding);
    }

    private String around(ShownUnit unit, Interval kept) {
        return of(
                "quantity.around",
                said(unit, kept.median(), NEAREST),
                figure(unit, kept.low(), DOWN),
                figure(unit, kept.high(), UP));
    }

    private String range(ShownUnit unit, Interval kept) {
        return of(unit.key(), fromTo(figure(unit, kept.low(), DOWN), figure(unit, kept.high(), UP)));
    }

    private String fromTo(String low, String high) {
        return low.equals(high) ? low : of("quantity.range", low, high);
    }
}
