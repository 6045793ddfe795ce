package undercroft.app.form.place;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javafx.beans.binding.BooleanBinding;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.MonthDayField;
import undercroft.app.form.NumberField;
import undercroft.app.form.Slug;
import undercroft.app.form.WordsField;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.LitHours;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** A place: what it is called, how warm, how slowly its bottles follow the air, how light. */
public final class PlaceForm extends Form {
    private static final MonthDay USUALLY_WARMEST = MonthDay.of(7, 25);

    /** Where the temperature comes from. */
    public enum Source {
        LOGGED("logged"),
        TOPIC("topic"),
        GUESS("guess"),
        SWING("swing");

        private final String key;

        Source(String key) {
            this.key = key;
        }

        String words(Messages messages) {
            return messages.of("form.place.source." + key);
        }
    }

    private final Optional<Place> before;
    private final WordsField name;
    private final ChoiceField<Source> source;
    private final TopicFields topic;
    private final NumberField guess;
    private final NumberField mean;
    private final NumberField amplitude;
    private final MonthDayField warmest;
    private final NumberField spread;
    private final ChoiceField<Stacking> stacking;
    private final NumberField lag;
    private final ChoiceField<LightPlace> light;
    private final NumberField lux;
    private final NumberField hours;
    private final BooleanField measured;

    /** Without {@code before} a new place. */
    public PlaceForm(Messages messages, Cellar cellar, Optional<Place> before) {
        super(messages, cellar);
        this.before = before;
        name = add(
                new WordsField(
                                messages(),
                                "place-name",
                                words("name"),
                                before.map(Place::name).orElse(""))
                        .required(),
                "name");
        TemperatureSource was = before.map(Place::temperature).orElseGet(() -> new TemperatureSource.FixedGuess(18, 2));
        source = add(new ChoiceField<>(
                messages(),
                "place-source",
                words("source"),
                List.of(Source.values()),
                each -> each.words(messages),
                before.flatMap(Place::topic).isPresent() ? Source.TOPIC : of(was)));
        topic = new TopicFields(this, units(), before.flatMap(Place::topic));
        guess = add(number("guess", Measure.TEMPERATURE, -20, 60).starting(middle(was)), "celsius");
        mean = add(number("mean", Measure.TEMPERATURE, -20, 60).starting(middle(was)), "meanCelsius");
        amplitude = add(number("amplitude", Measure.TEMPERATURE_STEP, 0, 30), "amplitudeKelvin");
        warmest = add(new MonthDayField(messages(), "place-warmest", words("warmest"), warmest(was)));
        spread = add(number("spread", Measure.TEMPERATURE_STEP, 0, 20).starting(spread(was)), "spreadKelvin");
        amplitude.show(was instanceof TemperatureSource.YearlySwing swing ? swing.amplitudeKelvin() : 6);
        double lagHours = before.map(Place::lagHours).orElse(Stacking.CRATE.lagHours());
        stacking = add(new ChoiceField<>(
                messages(),
                "place-stacking",
                words("stacking"),
                List.of(Stacking.values()),
                each -> each.words(messages),
                Stacking.of(lagHours)));
        lag = add(number("lag", Measure.HOURS, 0, 120).starting(lagHours), "lagHours");
        LightSetting shine = before.map(Place::light).orElseGet(() -> LightSetting.usual(LightPlace.DARK));
        light = add(ChoiceField.of(messages(), "place-light", words("light"), LightPlace.class, shine.kind()));
        lux = add(number("lux", Measure.ILLUMINANCE, 0, 150_000).starting(shine.lux()), "lux");
        hours = add(number("hours", Measure.HOURS, 0, 24).starting(shine.hoursPerDay()), "hoursPerDay");
        measured = add(new BooleanField(messages(), "place-measured", words("measured"), shine.measured()));
        askWhatMatters();
        light.chosenProperty().addListener((property, old, kind) -> fillUsual(kind));
        begin();
    }

    private void askWhatMatters() {
        topic.askWhen(source.chosenProperty().isEqualTo(Source.TOPIC));
        guess.askWhen(isGuessed());
        mean.askWhen(source.chosenProperty().isEqualTo(Source.SWING));
        amplitude.askWhen(source.chosenProperty().isEqualTo(Source.SWING));
        warmest.askWhen(source.chosenProperty().isEqualTo(Source.SWING));
        spread.askWhen(isGuessed().or(source.chosenProperty().isEqualTo(Source.SWING)));
        lag.askWhen(stacking.chosenProperty().isEqualTo(Stacking.OWN));
        lux.askWhen(light.chosenProperty().isNotEqualTo(LightPlace.DARK));
        hours.askWhen(light.chosenProperty().isNotEqualTo(LightPlace.DARK));
        measured.askWhen(light.chosenProperty().isNotEqualTo(LightPlace.DARK));
        if (before.isEmpty()) {
            source.hintProperty().set(words("source-hint"));
        }
        spread.hintProperty().set(words("spread-hint"));
        measured.hintProperty().set(words("light-hint"));
    }

    /** A live sensor is not heard at once: until then the place is as warm as somebody guesses. */
    private BooleanBinding isGuessed() {
        BooleanBinding guessed = source.chosenProperty().isEqualTo(Source.GUESS);
        return isLogged() ? guessed : guessed.or(source.chosenProperty().isEqualTo(Source.TOPIC));
    }

    private boolean isLogged() {
        return before.filter(place -> place.temperature() instanceof TemperatureSource.Logged)
                .isPresent();
    }

    private void fillUsual(LightPlace kind) {
        if (kind != null && !measured.value()) {
            lux.show(kind.lux());
            hours.show(kind.hoursPerDay());
        }
    }

    private String words(String key) {
        return messages().of("form.place." + key);
    }

    private NumberField number(String key, Measure measure, double least, double most) {
        return new NumberField(messages(), "place-" + key, words(key), measure, units(), least, most);
    }

    private static Source of(TemperatureSource source) {
        if (source instanceof TemperatureSource.Logged) {
            return Source.LOGGED;
        }
        return source instanceof TemperatureSource.FixedGuess ? Source.GUESS : Source.SWING;
    }

    private static double middle(TemperatureSource source) {
        if (source instanceof TemperatureSource.YearlySwing swing) {
            return swing.meanCelsius();
        }
        return source instanceof TemperatureSource.FixedGuess fixed ? fixed.celsius() : 18;
    }

    private static double spread(TemperatureSource source) {
        if (source instanceof TemperatureSource.YearlySwing swing) {
            return swing.spreadKelvin();
        }
        return source instanceof TemperatureSource.FixedGuess fixed ? fixed.spreadKelvin() : 2;
    }

    private static MonthDay warmest(TemperatureSource source) {
        return source instanceof TemperatureSource.YearlySwing swing ? swing.warmestDay() : USUALLY_WARMEST;
    }

    public WordsField name() {
        return name;
    }

    public ChoiceField<Source> source() {
        return source;
    }

    /** What is asked about a live sensor, in order. */
    public List<Field<?>> topicFields() {
        return topic.fields();
    }

    /** What is asked about the temperature, in order. */
    public List<Field<?>> temperatureFields() {
        return List.of(guess, mean, amplitude, warmest, spread);
    }

    public ChoiceField<Stacking> stacking() {
        return stacking;
    }

    public NumberField lag() {
        return lag;
    }

    /** What is asked about light, in order. */
    public List<Field<?>> lightFields() {
        return List.of(light, lux, hours, measured);
    }

    @Override
    public String what() {
        return messages()
                .of(
                        before.isPresent() ? "undo.place.changed" : "undo.place.added",
                        name.value().strip());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        String id = before.map(Place::id)
                .orElseGet(() -> Slug.of(
                        name.value(),
                        "place",
                        current.places().stream().map(Place::id).toList()));
        double lagHours = stacking.value() == Stacking.OWN
                ? lag.figure()
                : stacking.value().lagHours();
        return current.withPlace(new Place(
                id,
                name.value(),
                temperature(),
                lagHours,
                lightSetting(),
                before.flatMap(Place::followed),
                source.value() == Source.TOPIC ? Optional.of(topic.topic()) : Optional.empty(),
                before.map(Place::summerMaximumCelsius).orElse(OptionalDouble.empty())));
    }

    private TemperatureSource temperature() {
        return switch (source.value()) {
            case LOGGED -> new TemperatureSource.Logged();
            case TOPIC -> isLogged() ? new TemperatureSource.Logged() : guessed();
            case GUESS -> guessed();
            case SWING ->
                new TemperatureSource.YearlySwing(mean.figure(), amplitude.figure(), warmest.value(), spread.figure());
        };
    }

    private TemperatureSource guessed() {
        return new TemperatureSource.FixedGuess(guess.figure(), spread.figure());
    }

    private LightSetting lightSetting() {
        LightPlace kind = light.value();
        return kind == LightPlace.DARK
                ? LightSetting.usual(kind)
                : new LightSetting(kind, lux.figure(), hours.figure(), measured.value(), litHours());
    }

    /** The hours of the day that were told before, as long as they hold the hours of light now given. */
    private Optional<LitHours> litHours() {
        return before.flatMap(place -> place.light().lit()).filter(lit -> hours.figure() <= lit.length());
    }

    /** The cellar without a place; an {@link InvalidInput} that names the batches while any has to do with it. */
    public static Cellar without(Cellar current, String placeId) {
        String users = current.batches().stream()
                .filter(batch -> stoodIn(batch, placeId))
                .map(Batch::name)
                .collect(Collectors.joining(", "));
        if (!users.isEmpty()) {
            throw new InvalidInput(
                    "", "form.place.in-use", current.place(placeId).name(), users);
        }
        if (current.servings().stream().anyMatch(serving -> serving.isChilledIn(placeId))) {
            throw new InvalidInput(
                    "", "form.place.in-serving", current.place(placeId).name());
        }
        return current.withPlaces(current.places().stream()
                .filter(place -> !place.id().equals(placeId))
                .toList());
    }

    private static boolean stoodIn(Batch batch, String placeId) {
        return batch.lots().stream()
                .flatMap(lot -> lot.stays().stream())
                .anyMatch(stay -> stay.placeId().equals(placeId));
    }
}
