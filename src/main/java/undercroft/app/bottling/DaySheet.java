package undercroft.app.bottling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.bottling.BottlePressure;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.FillRow;
import undercroft.bottling.SugarPlan;
import undercroft.calc.gas.HeatLimit;
import undercroft.outlook.lot.Alert;
import undercroft.picture.PressurePicture;
import undercroft.quantity.Interval;
import undercroft.quantity.Phrase;
import undercroft.wording.DoseLine;
import undercroft.wording.QuantityFormat;

/** A bottling day in words. */
public record DaySheet(BottlingDay day, QuantityFormat words) {

    /** Whether to bottle: a shape and a word, why, and what is at stake, which may be empty. */
    public record Verdict(Alert alert, String word, String reason, String stake) {}

    /** One kind of bottle; {@code refusal} is empty for bottles that may be filled. */
    public record BottleLine(String filled, String name, String beer, String headspace, String refusal) {}

    /** How one kind of bottle stands on a hot day. */
    public record PressureLine(String name, String upperEstimate, String limit, String highestTarget, boolean over) {}

    public Verdict verdict() {
        String stake = day.atStake().map(words::of).orElse("");
        String reason = words.of(day.unfinished().reason());
        return switch (day.unfinished().verdict()) {
            case GO -> new Verdict(Alert.CLEAR, words.of("bottling.verdict.go"), reason, stake);
            case WAIT -> new Verdict(Alert.ACT, words.of("bottling.verdict.wait"), reason, stake);
            case UNKNOWN -> new Verdict(Alert.WATCH, words.of("bottling.verdict.unknown"), reason, stake);
        };
    }

    public List<BottleLine> bottles() {
        return day.order().rows().stream().map(this::line).toList();
    }

    private BottleLine line(FillRow row) {
        return new BottleLine(
                words.of("bottling.bottles.of", row.filled(), row.available()),
                words.messages().name(row.bottle()),
                litres(row.filledLitres()),
                words.millilitres(row.bottle().headspaceMillilitres()),
                row.refusal().map(words::of).orElse(""));
    }

    /** How much is filled into how many. */
    public String bottleSum() {
        return words.of(
                "bottling.bottles.sum",
                day.order().filled(),
                litres(day.order().filledLitres()),
                litres(day.order().leftOverLitres()));
    }

    /** Beer for bottles and keg. */
    public String shares() {
        String bottles = words.of("bottling.beer.to-bottles", litres(day.order().bottleLitres()));
        return day.keg()
                .map(keg ->
                        bottles + " " + words.of("bottling.beer.to-keg", litres(keg.litres()), words.of(keg.words())))
                .orElse(bottles);
    }

    public String litres(double litres) {
        return words.litres(litres);
    }

    public List<PressureLine> pressures() {
        return day.pressures().stream().map(this::line).toList();
    }

    private PressureLine line(BottlePressure pressure) {
        Interval hot = pressure.warmths()
                .get(BottlePressure.CELSIUS.indexOf((int) BottlePressure.CHECKED_CELSIUS))
                .gaugeBar();
        return new PressureLine(
                words.of("bottling.bottle", pressure.bottle(), pressure.bottle().colour()),
                words.barWorst(hot.high()),
                words.barLimit(pressure.limits().workingPressureBar()),
                words.volumesLimit(pressure.highestTargetVolumes()),
                pressure.marginBar() < 0);
    }

    /** The warmth at which a target is held to the limit. */
    public String checkedAt() {
        return words.statedCelsius(BottlePressure.CHECKED_CELSIUS);
    }

    /** How warm the weakest bottle may get. */
    public String heatLimit() {
        return day.weakest()
                .map(weakest -> {
                    HeatLimit limit = weakest.heatLimit();
                    return switch (limit.reach()) {
                        case NOT_REACHED ->
                            words.of("bottling.heat.none", weakest.bottle(), words.heatLimit(Double.POSITIVE_INFINITY));
                        case BEYOND_WHEN_COLD -> words.of("bottling.heat.cold", weakest.bottle());
                        case PRESSURE, LIQUID_FULL ->
                            words.of("bottling.heat.limit", words.celsiusLimit(limit.celsius()), weakest.bottle());
                        case MATERIAL ->
                            words.of("bottling.heat.material", words.celsiusLimit(limit.celsius()), weakest.bottle());
                    };
                })
                .orElse("");
    }

    /** The range usual for the kind of beer, with where it comes from. */
    public String usualTarget() {
        return words.of("bottling.target.usual", day.plan().beer().kind(), words.volumeRange(day.usualTargetVolumes()));
    }

    /** The highest target all the bottles may hold; empty when none may be filled. */
    public String highestTarget() {
        return day.highestTargetVolumes()
                .map(highest -> words.of("bottling.target.highest", words.volumesLimit(highest)))
                .orElse("");
    }

    /** The figures of the dose, the same as {@code dose} prints. */
    public List<DoseLine> dose() {
        return DoseLine.of(day.sugar().dose(), words);
    }

    /** Sugar into each kind of bottle, if each is dosed by itself. */
    public List<DoseLine> perBottle() {
        return day.sugar().perBottle().stream()
                .map(per -> new DoseLine(
                        words.of("bottling.sugar.each", per.bottle()),
                        words.weighed(per.grams().median())))
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
        return words.of(
                "bottling.sugar.syrup",
                words.millilitres(sugar.dose().syrupWaterMillilitres()),
                SugarPlan.BOIL_MINUTES,
                words.statedCelsius(SugarPlan.COOL_BELOW_CELSIUS));
    }

    /** What has to lie ready. */
    public List<String> supplies() {
        List<String> all = new ArrayList<>();
        day.supplies().closures().entrySet().stream()
                .sorted((a, b) -> a.getKey().compareTo(b.getKey()))
                .map(entry -> words.of("bottling.supplies.closures", entry.getValue(), entry.getKey()))
                .forEach(all::add);
        all.add(words.of("bottling.supplies.bottles", day.supplies().spareBottles()));
        all.addAll(said(day.supplies().equipment()));
        return all;
    }

    /** Sentences of the day in this language and these units. */
    public List<String> said(List<Phrase> phrases) {
        return phrases.stream().map(words::of).toList();
    }

    /** The picture of the weakest bottle, if any may be filled. */
    public Optional<PressurePicture> picture() {
        return day.weakest().map(weakest -> new PressurePicture(weakest, words));
    }
}
