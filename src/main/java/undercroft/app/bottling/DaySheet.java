package undercroft.app.bottling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import undercroft.bottling.BottlePressure;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.DoseLine;
import undercroft.bottling.FillRow;
import undercroft.bottling.SugarPlan;
import undercroft.calc.gas.HeatLimit;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.Alert;
import undercroft.picture.PressurePicture;
import undercroft.quantity.Interval;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;
import undercroft.wording.Texts;

/** A bottling day in words. */
public record DaySheet(BottlingDay day, UnitSystem units) {

    /** Whether to bottle: a shape and a word, why, and what is at stake, which may be empty. */
    public record Verdict(Alert alert, String word, String reason, String stake) {}

    /** One kind of bottle; {@code refusal} is empty for bottles that may be filled. */
    public record BottleLine(String filled, String name, String beer, String headspace, String refusal) {}

    /** How one kind of bottle stands on a hot day. */
    public record PressureLine(String name, String safety, String limit, String highestTarget, boolean over) {}

    public Verdict verdict() {
        String stake = day.atStake().orElse("");
        String reason = day.unfinished().reason();
        return switch (day.unfinished().verdict()) {
            case GO -> new Verdict(Alert.CLEAR, Texts.of("bottling.verdict.go"), reason, stake);
            case WAIT -> new Verdict(Alert.ACT, Texts.of("bottling.verdict.wait"), reason, stake);
            case UNKNOWN -> new Verdict(Alert.WATCH, Texts.of("bottling.verdict.unknown"), reason, stake);
        };
    }

    public List<BottleLine> bottles() {
        return day.order().rows().stream().map(this::line).toList();
    }

    private BottleLine line(FillRow row) {
        return new BottleLine(
                Texts.of("bottling.bottles.of", row.filled(), row.available()),
                row.bottle().label(),
                litres(row.filledLitres()),
                Volume.ofMillilitres(
                                row.bottle().brimfulMillilitres() - row.bottle().fillMillilitres())
                        .text(units),
                row.refusal().orElse(""));
    }

    /** How much is filled into how many. */
    public String bottleSum() {
        return Texts.counted(
                "bottling.bottles.sum",
                day.order().filled(),
                litres(day.order().filledLitres()),
                litres(day.order().leftOverLitres()));
    }

    /** Beer for bottles and keg. */
    public String shares() {
        String bottles = Texts.of("bottling.beer.to-bottles", litres(day.order().bottleLitres()));
        return day.keg()
                .map(keg -> bottles + " " + Texts.of("bottling.beer.to-keg", litres(keg.litres()), keg.words(units)))
                .orElse(bottles);
    }

    /** With a capital and a full stop. */
    public static String sentence(String words) {
        return Texts.of("form.fault.plain", words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1));
    }

    public String litres(double litres) {
        return Volume.ofLitres(litres).text(units);
    }

    public List<PressureLine> pressures() {
        return day.pressures().stream().map(this::line).toList();
    }

    private PressureLine line(BottlePressure pressure) {
        Interval hot = pressure.warmths()
                .get(BottlePressure.CELSIUS.indexOf((int) BottlePressure.CHECKED_CELSIUS))
                .gaugeBar();
        return new PressureLine(
                pressure.bottle().label() + ", " + pressure.bottle().colour().label(),
                bars(hot.high()),
                bars(pressure.limits().workingPressureBar()),
                Wording.number(Math.floor(pressure.highestTargetVolumes() * 10) / 10, 1) + " vol",
                pressure.marginBar() < 0);
    }

    /** The warmth at which a target has to be safe. */
    public String checkedAt() {
        return degrees(BottlePressure.CHECKED_CELSIUS);
    }

    public String bars(double gaugeBar) {
        return Pressure.ofBar(gaugeBar).text(units);
    }

    /** Warmth in whole degrees; limits are given rounded down. */
    public String degrees(double celsius) {
        return Temperature.ofCelsius(celsius).text(units).replace(".0 ", " ");
    }

    /** How warm the weakest bottle may get. */
    public String heatLimit() {
        return day.weakest()
                .map(weakest -> {
                    String name = weakest.bottle().label();
                    HeatLimit limit = weakest.heatLimit();
                    return switch (limit.reach()) {
                        case NOT_REACHED -> Texts.of("bottling.heat.none", name);
                        case BEYOND_WHEN_COLD -> Texts.of("bottling.heat.cold", name);
                        case PRESSURE, LIQUID_FULL ->
                            Texts.of("bottling.heat.limit", degreesDown(limit.celsius()), name);
                        case MATERIAL -> Texts.of("bottling.heat.material", degreesDown(limit.celsius()), name);
                    };
                })
                .orElse("");
    }

    private String degreesDown(double celsius) {
        return units == UnitSystem.US
                ? Wording.number(Math.floor(Temperature.ofCelsius(celsius).fahrenheit()), 0) + " °F"
                : Wording.number(Math.floor(celsius), 0) + " °C";
    }

    /** The range usual for the kind of beer, with where it comes from. */
    public String usualTarget() {
        Interval usual = day.usualTargetVolumes();
        return Texts.of(
                "bottling.target.usual",
                day.plan().beer().kind().label(),
                Wording.number(usual.low(), 1),
                Wording.number(usual.high(), 1));
    }

    /** The highest target all the bottles may hold; empty when none may be filled. */
    public String highestTarget() {
        return day.highestTargetVolumes()
                .map(highest -> Texts.of("bottling.target.highest", Wording.number(Math.floor(highest * 10) / 10, 1)))
                .orElse("");
    }

    /** The figures of the dose, the same as {@code dose} prints. */
    public List<DoseLine> dose() {
        return DoseLine.of(day.sugar().dose(), units);
    }

    /** Sugar into each kind of bottle, if each is dosed by itself. */
    public List<DoseLine> perBottle() {
        return day.sugar().perBottle().stream()
                .map(per -> new DoseLine(
                        Texts.of("bottling.sugar.each", per.bottle().label()),
                        DoseLine.massText(per.grams().median())))
                .toList();
    }

    /** True when the beer already holds the target. */
    public boolean needsNoSugar() {
        return day.sugar().dose().notNeeded();
    }

    /** Boiling and cooling; empty where no syrup is made. */
    public String syrup() {
        SugarPlan sugar = day.sugar();
        boolean dry = day.plan().filling().wish().perBottle();
        if (dry || sugar.dose().notNeeded()) {
            return "";
        }
        return Texts.of(
                "bottling.sugar.syrup",
                Volume.ofMillilitres(sugar.dose().syrupWaterMillilitres()).text(units),
                SugarPlan.BOIL_MINUTES,
                degrees(SugarPlan.COOL_BELOW_CELSIUS));
    }

    /** What has to lie ready. */
    public List<String> supplies() {
        List<String> all = new ArrayList<>();
        day.supplies().closures().entrySet().stream()
                .sorted((a, b) -> a.getKey().compareTo(b.getKey()))
                .map(entry -> Texts.of(
                        "bottling.supplies.closures",
                        entry.getValue(),
                        entry.getKey().label()))
                .forEach(all::add);
        all.add(Texts.of("bottling.supplies.bottles", day.supplies().spareBottles()));
        all.addAll(day.supplies().equipment());
        return all;
    }

    /** The picture of the weakest bottle, if any may be filled. */
    public Optional<PressurePicture> picture() {
        return day.weakest().map(weakest -> new PressurePicture(weakest, units));
    }
}
