package undercroft.app.form;

import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import undercroft.calc.priming.OunceRule;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Gravity;
import undercroft.quantity.Mass;
import undercroft.quantity.Pressure;
import undercroft.quantity.QuantityText;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;

/** A kind of number in a field: the unit in its label, and how typed text becomes the figure the cellar keeps. */
public enum Measure {
    /** Kept in °C. */
    TEMPERATURE(
            "°C",
            "°F",
            1,
            text -> Temperature.parse(text).celsius(),
            celsius -> Temperature.ofCelsius(celsius).fahrenheit()),
    /** Kept in K. */
    TEMPERATURE_STEP(
            "°C", "°F", 1, plain("step", Map.of("c", k -> k, "k", k -> k, "f", f -> f / 1.8)), kelvin -> kelvin * 1.8),
    /** Kept in litres. */
    BEER(
            "L",
            "gal",
            2,
            text -> Volume.parse(text).litres(),
            litres -> Volume.ofLitres(litres).usGallons()),
    /** Kept in millilitres. */
    BOTTLE(
            "mL",
            "fl oz",
            1,
            text -> Volume.parse(text).millilitres(),
            millilitres -> Volume.ofMillilitres(millilitres).usFluidOunces()),
    /** Kept in grams. */
    WEIGHT(
            "g",
            "oz",
            2,
            text -> Mass.parse(text).grams(),
            grams -> Mass.ofGrams(grams).ounces()),
    /** Kept in bar above the outside air. */
    PRESSURE(
            "bar",
            "psi",
            2,
            text -> Pressure.parse(text).bar(),
            bar -> Pressure.ofBar(bar).psi()),
    /** Kept in metres. */
    ALTITUDE("m", "ft", 0, plain("height", Map.of("m", m -> m, "ft", f -> f * 0.3048)), metres -> metres / 0.3048),
    /** Kept in millimetres, also where US units are shown. */
    LENGTH(
            "mm",
            "mm",
            2,
            plain("length", Map.of("mm", m -> m, "cm", c -> c * 10, "in", i -> i * 25.4)),
            DoubleUnaryOperator.identity()),
    /** Kept as specific gravity. */
    GRAVITY("", "", 4, text -> Gravity.parse(text).specific(), DoubleUnaryOperator.identity()),
    /** Kept in volumes of CO2. */
    CARBONATION("vol", "vol", 2, text -> Carbonation.parse(text).volumes(), DoubleUnaryOperator.identity()),
    PERCENT("%", "%", 2, plain("number", Map.of("%", p -> p)), DoubleUnaryOperator.identity()),
    BITTERNESS("IBU", "IBU", 1, plain("bitterness", Map.of("ibu", b -> b)), DoubleUnaryOperator.identity()),
    /** Kept in EBC; one degree Lovibond's SRM is 1.97 of it, the trade's usual factor. */
    COLOUR(
            "EBC",
            "EBC",
            1,
            plain("colour", Map.of("ebc", e -> e, "srm", s -> s * 1.97)),
            DoubleUnaryOperator.identity()),
    /** Kept in millilitres of product to a litre of water. */
    LIQUID_RATE(
            "mL/L",
            "fl oz/gal",
            2,
            plain("liquid-rate", Map.of("ml/l", r -> r, "fl oz/gal", r -> r * 7.8125, "floz/gal", r -> r * 7.8125)),
            rate -> rate / 7.8125),
    /** Kept in grams of product to a litre of water. */
    SOLID_RATE(
            "g/L",
            "oz/gal",
            2,
            plain("solid-rate", Map.of("g/l", r -> r, "oz/gal", r -> r * OunceRule.GRAMS_PER_LITRE)),
            rate -> rate / OunceRule.GRAMS_PER_LITRE),
    ILLUMINANCE("lx", "lx", 0, plain("lux", Map.of("lx", l -> l, "lux", l -> l)), x -> x),
    HOURS(
            "h",
            "h",
            2,
            plain("hours", Map.of("h", h -> h, "hours", h -> h, "min", m -> m / 60)),
            DoubleUnaryOperator.identity()),
    DAYS("d", "d", 1, plain("days", Map.of("d", d -> d, "days", d -> d)), DoubleUnaryOperator.identity()),
    /** Whole bottles. */
    BOTTLES(
            "",
            "",
            0,
            plain("bottles", Map.of("", n -> n, "bottle", n -> n, "bottles", n -> n)),
            DoubleUnaryOperator.identity());

    private static final Pattern BARE = Pattern.compile("[+\u2212-]?[\\d.,]+");

    private final String metricSymbol;
    private final String usSymbol;
    private final int decimals;
    private final ToDoubleFunction<String> reading;
    private final DoubleUnaryOperator toUs;

    Measure(
            String metricSymbol,
            String usSymbol,
            int decimals,
            ToDoubleFunction<String> reading,
            DoubleUnaryOperator toUs) {
        this.metricSymbol = metricSymbol;
        this.usSymbol = usSymbol;
        this.decimals = decimals;
        this.reading = reading;
        this.toUs = toUs;
    }

    private static ToDoubleFunction<String> plain(String kind, Map<String, DoubleUnaryOperator> units) {
        return text -> QuantityText.parse(text, kind, units);
    }

    /** The unit in a field's label; may be empty. */
    public String symbol(UnitSystem units) {
        return units == UnitSystem.US ? usSymbol : metricSymbol;
    }

    /** Reads a typed figure; a number without unit has the one shown. */
    double parse(String text, UnitSystem units) {
        String typed = text.strip();
        return reading.applyAsDouble(BARE.matcher(typed).matches() ? typed + symbol(units) : typed);
    }

    /** A kept figure as a field shows it: in the unit of its label, without the unit and without idle zeros. */
    public String text(double kept, UnitSystem units, Locale locale) {
        double shown = units == UnitSystem.US ? toUs.applyAsDouble(kept) : kept;
        // No separators between thousands: what is shown must read the same when it is typed again.
        DecimalFormat format = new DecimalFormat("0", DecimalFormatSymbols.getInstance(locale));
        format.setMaximumFractionDigits(decimals);
        format.setRoundingMode(RoundingMode.HALF_UP);
        String text = format.format(shown);
        return text.equals("-0") ? "0" : text;
    }

    /** The same with its unit. */
    public String textWithUnit(double kept, UnitSystem units, Locale locale) {
        return (text(kept, units, locale) + " " + symbol(units)).strip();
    }
}
