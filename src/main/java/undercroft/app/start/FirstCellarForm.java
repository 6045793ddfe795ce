package undercroft.app.start;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.Slug;
import undercroft.app.form.WordsField;
import undercroft.app.form.ZoneText;
import undercroft.app.form.place.Stacking;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.Settings;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** A cellar of one's own: what it is called, and the first place in it. Everything but the name has a first guess. */
public final class FirstCellarForm extends Form {
    /** Coldest and warmest are taken for what is seldom passed, 5 and 95 %: so many standard deviations off. */
    private static final double SELDOM = 1.645;

    private static final String FALLBACK = "cellar";

    private final WordsField name;
    private final ChoiceField<Spot> spot;
    private final WordsField placeName;
    private final NumberField usual;
    private final NumberField coldest;
    private final NumberField warmest;
    private final ChoiceField<LightPlace> light;
    private final WordsField zone;

    /** {@code here} is the clock that is offered. */
    public FirstCellarForm(Messages messages, ZoneId here, UnitSystem units) {
        super(messages, Cellar.empty(FALLBACK, here).withSettings(new Settings(units, 0)));
        name = add(new WordsField(messages(), "start-name", messages().of("start.name.label"), "").required(), "name");
        spot = add(new ChoiceField<>(
                messages(),
                "start-spot",
                messages().of("start.spot.label"),
                List.of(Spot.values()),
                each -> each.words(messages),
                Spot.CUPBOARD));
        placeName = add(
                new WordsField(messages(), "start-place", messages().of("start.place.label"), "").required(), "place");
        usual = add(temperature("usual"), "celsius");
        coldest = add(temperature("coldest"), "coldest");
        warmest = add(temperature("warmest"), "warmest");
        light = add(new ChoiceField<>(
                messages(),
                "start-light",
                messages().of("start.light.label"),
                List.of(LightPlace.DARK, LightPlace.ROOM_EVENING, LightPlace.ROOM_DAY),
                kind -> messages().of("start.light." + kind.id()),
                LightPlace.DARK));
        zone = add(
                new WordsField(messages(), "start-zone", messages().of("form.settings.zone"), here.getId()).required(),
                "zone");
        BooleanBinding other =
                Bindings.createBooleanBinding(() -> spot.chosenProperty().get() == Spot.OTHER, spot.chosenProperty());
        placeName.askWhen(other);
        spot.chosenProperty().addListener((property, before, after) -> guess(after));
        guess(Spot.CUPBOARD);
        begin();
    }

    /** The same answers in other units. */
    public FirstCellarForm in(UnitSystem other) {
        FirstCellarForm form = new FirstCellarForm(messages(), cellar().zone(), other);
        form.name.textProperty().set(name.textProperty().get());
        form.spot.chosenProperty().set(spot.chosenProperty().get());
        form.placeName.textProperty().set(placeName.textProperty().get());
        form.light.chosenProperty().set(light.chosenProperty().get());
        form.zone.textProperty().set(zone.textProperty().get());
        if (isSound(usual) && isSound(coldest) && isSound(warmest)) {
            form.usual.show(usual.figure());
            form.coldest.show(coldest.figure());
            form.warmest.show(warmest.figure());
        }
        return form;
    }

    private static boolean isSound(NumberField field) {
        try {
            return Double.isFinite(field.figure());
        } catch (InvalidInput faulty) {
            return false;
        }
    }

    private NumberField temperature(String key) {
        return new NumberField(
                messages(),
                "start-" + key,
                messages().of("start." + key + ".label"),
                Measure.TEMPERATURE,
                units(),
                -20,
                60);
    }

    private void guess(Spot chosen) {
        if (chosen != null) {
            usual.show(chosen.usualCelsius());
            coldest.show(chosen.coldestCelsius());
            warmest.show(chosen.warmestCelsius());
        }
    }

    public WordsField name() {
        return name;
    }

    public ChoiceField<Spot> spot() {
        return spot;
    }

    /** Asked when the place is none of the usual ones. */
    public WordsField placeName() {
        return placeName;
    }

    /** Usually, coldest and warmest, in this order. */
    public List<NumberField> temperatures() {
        return List.of(usual, coldest, warmest);
    }

    public ChoiceField<LightPlace> light() {
        return light;
    }

    /** Whose clock the cellar follows. */
    public WordsField zone() {
        return zone;
    }

    public UnitSystem unitSystem() {
        return units();
    }

    /** The folder such a name goes into, below the one where documents are kept. */
    public Path folderIn(Path parent) {
        return parent.resolve(Slug.of(name.textProperty().get(), FALLBACK, List.of()));
    }

    /** The place in a few words, as its heading on the shelf will read. */
    public String placeWords() {
        return spot.chosenProperty().get() == Spot.OTHER
                ? placeName.textProperty().get().strip()
                : spot.value().words(messages());
    }

    /** What is guessed of its air; empty while it cannot be told. */
    public String climateWords() {
        if (!(isSound(usual) && isSound(coldest) && isSound(warmest))) {
            return "";
        }
        QuantityFormat words = QuantityFormat.of(messages(), units(), cellar().zone());
        return messages()
                .of(
                        "start.preview.climate",
                        words.celsius(usual.figure()),
                        words.celsius(coldest.figure()),
                        words.celsius(warmest.figure()));
    }

    @Override
    public String what() {
        return name.value();
    }

    /** The cellar to begin with. */
    public Cellar made() {
        return applyTo(cellar());
    }

    @Override
    public Cellar applyTo(Cellar current) {
        double middle = usual.figure();
        double low = coldest.figure();
        double high = warmest.figure();
        if (low > middle) {
            throw new InvalidInput("coldest", "start.fault.coldest");
        }
        if (high < middle) {
            throw new InvalidInput("warmest", "start.fault.warmest");
        }
        double spread = Math.max(high - middle, middle - low) / SELDOM;
        Place place = new Place(
                Slug.of(placeWords(), "place", List.of()),
                placeWords(),
                new TemperatureSource.FixedGuess(middle, Math.min(20, spread)),
                Stacking.CRATE.lagHours(),
                LightSetting.usual(light.value()));
        return current.withName(name.value())
                .withZone(ZoneText.parse("zone", zone.value()))
                .withPlace(place.withSummerMaximum(OptionalDouble.of(high)));
    }
}
