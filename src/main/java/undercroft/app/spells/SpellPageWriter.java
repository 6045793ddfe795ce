package undercroft.app.spells;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.picture.PlacePicture;
import undercroft.picture.SpellBoard;
import undercroft.quantity.Interval;
import undercroft.series.Track;
import undercroft.wording.HandlingWords;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;
import undercroft.wording.SpellWords;

/** Writes the page of a spell. */
record SpellPageWriter(CellarOutlook outlook, SpellBoard.Mark chosen, ShelfWords words) {
    static SpellPage page(CellarOutlook outlook, SpellBoard.Mark chosen, Messages messages) {
        return new SpellPageWriter(outlook, chosen, ShelfWords.of(outlook, messages)).page();
    }

    private SpellPage page() {
        SpellReview spell = chosen.spell();
        Optional<PlaceOutlook> place = outlook.places().stream()
                .filter(each -> each.place().id().equals(spell.place().id()))
                .findFirst();
        Alert alert = spell.alert();
        Optional<PlacePicture> picture = place.map(each -> new PlacePicture(words, each));
        return new SpellPage(
                words.of(
                        spell.warm() ? "spells.title.warm" : "spells.title.cold",
                        spell.place().name(),
                        words.day(spell.from()),
                        words.day(spell.until())),
                summary(spell),
                alert,
                cautions(spell),
                groups(place),
                picture.map(each -> each.around(spell)),
                picture.map(each -> each.end(spell)).orElse(spell.until().getEpochSecond()));
    }

    private String summary(SpellReview spell) {
        double days = Duration.between(spell.from(), spell.until()).toHours() / 24.0;
        String how = words.of(
                spell.warm() ? "spells.summary.warm" : "spells.summary.cold",
                words.format().celsius(spell.peakCelsius()),
                words.format().number(days, 1));
        return spell.certain() ? how : how + " " + words.of("spells.summary.uncertain");
    }

    /** Of the lot the spell pressed hardest. */
    private List<String> cautions(SpellReview spell) {
        return spell.impacts().stream()
                .filter(impact -> impact.alert() != Alert.CLEAR)
                .findFirst()
                .map(impact -> words.outlook().batch(impact.batchId()).lot(impact.lotId()))
                .map(new HandlingWords(words)::cautions)
                .orElse(List.of());
    }

    private List<SpellPage.Group> groups(Optional<PlaceOutlook> place) {
        Map<SpellImpact.Advice, List<SpellPage.Line>> byAdvice = new EnumMap<>(SpellImpact.Advice.class);
        chosen.spell().worstOfEachBatch().stream()
                .sorted(Comparator.comparingDouble((SpellImpact impact) -> impact.hoursOverWorkingPressure())
                        .reversed())
                .forEach(impact -> byAdvice.computeIfAbsent(impact.advice(), advice -> new ArrayList<>())
                        .add(line(impact, place)));
        return byAdvice.entrySet().stream()
                .map(entry -> new SpellPage.Group(advice(entry.getKey()), entry.getValue()))
                .toList();
    }

    private String advice(SpellImpact.Advice advice) {
        return switch (advice) {
            case COOL_BEFORE_TOUCHING -> words.of("spells.advice.cool-first");
            case OPEN_COLD -> words.of("spells.advice.open-cold");
            case DRINK_FIRST -> words.of("spells.advice.drink-first");
            case KEEP_COOLER -> words.of("spells.advice.keep-cooler");
            case LOOK_FOR_LIFTED_CAPS -> words.of("spells.advice.caps");
            case NONE -> words.of("spells.advice.as-usual");
            case GONE -> words.of("spells.advice.gone");
        };
    }

    private SpellPage.Line line(SpellImpact impact, Optional<PlaceOutlook> place) {
        List<String> figures = new ArrayList<>();
        Interval peak = impact.peakGaugeBar();
        figures.add(words.of("spells.figure.peak", words.format().bars(peak)));
        if (impact.hoursOverWorkingPressure() >= 0.5) {
            figures.add(words.of("spells.figure.over", words.format().number(impact.hoursOverWorkingPressure(), 0)));
        }
        figures.add(words.of(
                "spells.figure.memory",
                words.format().barWorst(impact.exposure().memoryBeforeBar().high()),
                words.format().barWorst(impact.exposure().memoryAfterBar().high())));
        days(figures, impact.shelfDaysCost(), "spells.figure.shelf-cost", "spells.figure.shelf-spared");
        days(figures, impact.carbonationDaysGained(), "spells.figure.gained", "spells.figure.lost");
        return new SpellPage.Line(
                impact.batchId(),
                impact.batchName(),
                impact.alert(),
                new SpellWords(words).verdict(chosen.spell(), impact),
                figures,
                place.map(each -> worst(each.bottles(), impact)).orElse(impact.since()),
                impact.batchId().equals(chosen.impact().batchId()));
    }

    private void days(List<String> figures, double days, String more, String less) {
        if (Math.abs(days) >= 0.5) {
            figures.add(words.of(days > 0 ? more : less, words.format().number(Math.abs(days), 0)));
        }
    }

    private Instant worst(Track bottles, SpellImpact impact) {
        int sign = chosen.spell().warm() ? 1 : -1;
        int worst = bottles.indexAt(impact.since().getEpochSecond());
        for (int i = worst; i < bottles.indexAt(impact.until().getEpochSecond()); i++) {
            if (sign * bottles.valueAt(i) > sign * bottles.valueAt(worst)) {
                worst = i;
            }
        }
        return Instant.ofEpochSecond(bottles.timeAt(worst));
    }
}
