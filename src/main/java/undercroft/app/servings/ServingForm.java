package undercroft.app.servings;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.catalogue.CoolingMedium;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.quantity.Interval;
import undercroft.session.change.PromiseBottles;
import undercroft.wording.Messages;

/** Bottles promised for a time: which, how many, when, chilled where, how warm in the glass. */
public final class ServingForm extends Form {
    private static final int MOST_BOTTLES = 10_000;
    /** A room is not called a fridge above this (assumption). */
    private static final double COLD_CELSIUS = 8;

    private final Optional<Serving> before;
    private final Optional<CellarOutlook> outlook;
    private final Instant now;
    private final ChoiceField<Batch> batch;
    private final NumberField bottles;
    private final DateTimeField at;
    private final ChoiceField<Optional<Place>> place;
    private final ChoiceField<CoolingMedium> coolingMedium;
    private final NumberField glass;
    private final WordsField note;

    /** What a new pour begins with; each part may be left open. */
    public record Wish(Optional<String> batchId, int bottles, Optional<Instant> at) {
        public static final Wish OPEN = new Wish(Optional.empty(), 2, Optional.empty());
    }

    private ServingForm(
            Messages messages,
            Cellar cellar,
            Optional<Serving> before,
            Wish wish,
            Optional<CellarOutlook> outlook,
            Instant now) {
        super(messages, cellar);
        this.before = before;
        this.outlook = outlook;
        this.now = now;
        List<Batch> pourable =
                cellar.batches().stream().filter(each -> each.leftAt(now) > 0).toList();
        Batch first = before.map(Serving::batchId)
                .or(wish::batchId)
                .map(cellar::batch)
                .or(() -> pourable.stream().findFirst())
                .orElse(null);
        batch = add(
                ChoiceField.of(messages(), "serving-batch", messages().of("form.serving.batch"), pourable, first),
                "batch");
        bottles = add(
                new NumberField(
                                messages(),
                                "serving-bottles",
                                messages().of("form.serving.bottles"),
                                Measure.BOTTLES,
                                units(),
                                1,
                                MOST_BOTTLES)
                        .starting(before.map(Serving::bottles).orElse(wish.bottles())),
                "bottles");
        at = add(
                new DateTimeField(
                                messages(),
                                "serving-at",
                                messages().of("form.serving.at"),
                                cellar.zone(),
                                before.map(Serving::at).or(wish::at).orElseGet(() -> nextFreeEvening(cellar, now)))
                        .toCome(now),
                "at");
        place = add(
                new ChoiceField<>(
                        messages(),
                        "serving-place",
                        messages().of("form.serving.place"),
                        coldPlaces(cellar),
                        each -> each.map(Place::name).orElseGet(() -> messages().of("form.serving.elsewhere")),
                        before.isPresent() ? before.flatMap(Serving::placeId).map(cellar::place) : coldest(cellar)),
                "place");
        coolingMedium = add(
                ChoiceField.of(
                        messages(),
                        "serving-surroundings",
                        messages().of("form.serving.surroundings"),
                        Arrays.asList(CoolingMedium.values()),
                        before.map(Serving::coolingMedium).orElse(CoolingMedium.STILL_FRIDGE)),
                "surroundings");
        glass = add(
                new NumberField(
                                messages(),
                                "serving-glass",
                                messages().of("form.serving.glass"),
                                Measure.TEMPERATURE,
                                units(),
                                0,
                                25)
                        .optional()
                        .starting(before.map(Serving::glassCelsius).orElse(OptionalDouble.empty())),
                "glassCelsius");
        note = add(
                new WordsField(
                        messages(),
                        "serving-note",
                        messages().of("form.serving.note"),
                        before.map(Serving::note).orElse("")),
                "note");
        batch.chosenProperty().addListener((property, was, is) -> hint());
        coolingMedium.chosenProperty().addListener((property, was, is) -> hint());
        hint();
        begin();
    }

    /** A new pour. */
    public static ServingForm adding(
            Messages messages, Cellar cellar, Wish wish, Optional<CellarOutlook> outlook, Instant now) {
        return new ServingForm(messages, cellar, Optional.empty(), wish, outlook, now);
    }

    /** A pour that was planned before. */
    public static ServingForm changing(
            Messages messages, Cellar cellar, Serving serving, Optional<CellarOutlook> outlook, Instant now) {
        return new ServingForm(messages, cellar, Optional.of(serving), Wish.OPEN, outlook, now);
    }

    public List<Field<?>> fields() {
        return List.of(batch, bottles, at, place, coolingMedium, glass, note);
    }

    @Override
    public String what() {
        return messages()
                .of(
                        before.isPresent() ? "undo.serving.changed" : "undo.serving.added",
                        batch.value().name());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        String batchId = batch.value().id();
        Serving promised = new Serving(
                before.map(Serving::id).orElseGet(() -> PromiseBottles.freeId(current, batchId)),
                batchId,
                bottles.count(),
                at.value(),
                place.value().map(Place::id),
                coolingMedium.value(),
                glass.value(),
                note.value());
        return new PromiseBottles(promised, now, outlook).applyTo(current);
    }

    private void hint() {
        Batch chosen = batch.chosenProperty().get();
        if (chosen != null) {
            Interval usual = chosen.beer().kind().servingCelsius();
            glass.hintProperty()
                    .set(messages()
                            .of(
                                    "form.serving.glass-hint",
                                    chosen.beer().kind(),
                                    Measure.TEMPERATURE.text(
                                            usual.low(), units(), messages().locale()),
                                    Measure.TEMPERATURE.textWithUnit(
                                            usual.high(), units(), messages().locale())));
            bottles.hintProperty().set(messages().of("form.left.hint", chosen.leftAt(now)));
        }
        CoolingMedium kind = coolingMedium.chosenProperty().get();
        coolingMedium
                .hintProperty()
                .set(
                        kind == null || kind.isGoodForResting()
                                ? ""
                                : messages()
                                        .of(
                                                kind == CoolingMedium.FREEZER
                                                        ? "form.serving.freezer"
                                                        : "form.serving.ice-water"));
    }

    private static Instant nextFreeEvening(Cellar cellar, Instant now) {
        return now.atZone(cellar.zone())
                .toLocalDate()
                .plusDays(2)
                .atTime(LocalTime.of(18, 0))
                .atZone(cellar.zone())
                .toInstant();
    }

    /** A fridge that is no place of the cellar comes first: it is always there to choose. */
    private static List<Optional<Place>> coldPlaces(Cellar cellar) {
        List<Optional<Place>> places = new ArrayList<>(List.of(Optional.empty()));
        cellar.places().forEach(place -> places.add(Optional.of(place)));
        return places;
    }

    /** The coldest place of the cellar where any is as cold as a fridge. */
    private Optional<Place> coldest(Cellar cellar) {
        return outlook.flatMap(known -> known.places().stream()
                        .min(Comparator.comparingDouble(PlaceOutlook::nowCelsius))
                        .filter(place -> place.nowCelsius() <= COLD_CELSIUS)
                        .map(PlaceOutlook::place))
                .filter(cellar.places()::contains);
    }
}
