package undercroft.app.form.place;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableBooleanValue;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.TemperatureUnit;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;

/** The part of a place's form that is about its live sensor. */
final class TopicFields {
    private static final double USUAL_LOWEST_CELSIUS = -15;
    private static final double USUAL_HIGHEST_CELSIUS = 45;
    private static final String PATH = "topic.";

    private final WordsField name;
    private final WordsField pointer;
    private final WordsField timePointer;
    private final ChoiceField<TemperatureUnit> unit;
    private final NumberField lowest;
    private final NumberField highest;

    TopicFields(Group form, UnitSystem units, Optional<FollowedTopic> before) {
        name = form.add(
                new WordsField(
                        form.messages(),
                        "place-topic",
                        form.messages().of("form.place.topic"),
                        before.map(FollowedTopic::name).orElse("")),
                PATH + "name");
        name.hintProperty().set(form.messages().of("form.place.topic-hint"));
        pointer = form.add(
                new WordsField(
                        form.messages(),
                        "place-pointer",
                        form.messages().of("form.place.pointer"),
                        before.map(FollowedTopic::pointer).orElse("")),
                PATH + "pointer");
        pointer.hintProperty().set(form.messages().of("form.place.pointer-hint"));
        timePointer = form.add(
                new WordsField(
                        form.messages(),
                        "place-time-pointer",
                        form.messages().of("form.place.time-pointer"),
                        before.map(FollowedTopic::timePointer).orElse("")),
                PATH + "timePointer");
        timePointer.hintProperty().set(form.messages().of("form.place.time-pointer-hint"));
        unit = form.add(ChoiceField.of(
                form.messages(),
                "place-topic-unit",
                form.messages().of("form.place.topic-unit"),
                TemperatureUnit.class,
                before.map(FollowedTopic::unit).orElse(TemperatureUnit.CELSIUS)));
        lowest = form.add(
                number(form, units, "lowest")
                        .starting(before.map(FollowedTopic::lowestCelsius).orElse(USUAL_LOWEST_CELSIUS)),
                PATH + "lowestCelsius");
        highest = form.add(
                number(form, units, "highest")
                        .starting(before.map(FollowedTopic::highestCelsius).orElse(USUAL_HIGHEST_CELSIUS)),
                PATH + "highestCelsius");
        highest.hintProperty().set(form.messages().of("form.place.range-hint"));
    }

    private static NumberField number(Group form, UnitSystem units, String key) {
        return new NumberField(
                form.messages(),
                "place-" + key,
                form.messages().of("form.place." + key),
                Measure.TEMPERATURE,
                units,
                -60,
                100);
    }

    void askWhen(ObservableBooleanValue heard) {
        fields().stream().filter(field -> field != timePointer).forEach(field -> field.askWhen(heard));
        timePointer.askWhen(Bindings.and(heard, pointer.textProperty().isNotEmpty()));
    }

    List<Field<?>> fields() {
        return List.of(name, pointer, timePointer, unit, lowest, highest);
    }

    FollowedTopic topic() {
        try {
            return new FollowedTopic(
                    name.value(),
                    pointer.value(),
                    timePointer.isAsked() ? timePointer.value() : "",
                    unit.value(),
                    lowest.figure(),
                    highest.figure());
        } catch (InvalidInput fault) {
            throw fault.at(PATH + fault.where());
        }
    }
}
