package undercroft.app.form.cellar;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.Slug;
import undercroft.app.form.WordsField;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
import undercroft.catalogue.GlassColour;
import undercroft.cellar.Cellar;
import undercroft.wording.Messages;

/** A make of bottle of the user's own. */
public final class BottleForm extends Form {
    private final Optional<BottleType> before;
    private final WordsField name;
    private final NumberField fill;
    private final NumberField brimful;
    private final ChoiceField<BottleClass> bottleClass;
    private final ChoiceField<GlassColour> colour;
    private final ChoiceField<Closure> closure;
    private final NumberField wall;
    private final NumberField weight;
    private final NumberField diameter;
    private final NumberField test;

    /** Without {@code before} a new make. */
    public BottleForm(Messages messages, Cellar cellar, Optional<BottleType> before) {
        super(messages, cellar);
        this.before = before;
        name = add(
                new WordsField(
                                messages(),
                                "bottle-name",
                                words("name"),
                                before.map(BottleType::label).orElse(""))
                        .required(),
                "name");
        fill = add(number("fill", Measure.BOTTLE, 50, 10_000), "fillMillilitres");
        brimful = add(number("brimful", Measure.BOTTLE, 50, 11_000), "brimfulMillilitres");
        bottleClass = add(ChoiceField.of(
                messages(),
                "bottle-class",
                words("class"),
                BottleClass.class,
                before.map(BottleType::bottleClass).orElse(BottleClass.STANDARD)));
        colour = add(ChoiceField.of(
                messages(),
                "bottle-colour",
                words("colour"),
                GlassColour.class,
                before.map(BottleType::colour).orElse(GlassColour.AMBER)));
        closure = add(ChoiceField.of(
                messages(),
                "bottle-closure",
                words("closure"),
                Closure.class,
                before.map(BottleType::closure).orElse(Closure.CROWN)));
        wall = add(number("wall", Measure.LENGTH, 0.1, 10).starting(2.5), "wallMillimetres");
        weight = add(number("weight", Measure.WEIGHT, 5, 5_000), "emptyGrams");
        diameter = add(number("diameter", Measure.LENGTH, 30, 250), "bodyMillimetres");
        test = add(number("test", Measure.PRESSURE, 0.5, 40).optional(), "makerTestBar");
        before.ifPresent(this::show);
        brimful.hintProperty().set(words("brimful-hint"));
        test.hintProperty().set(words("test-hint"));
        bottleClass.chosenProperty().addListener((property, old, chosen) -> explain(chosen));
        explain(bottleClass.value());
        begin();
    }

    private void show(BottleType make) {
        fill.show(make.fillMillilitres());
        brimful.show(make.brimfulMillilitres());
        wall.show(make.wallMillimetres());
        weight.show(make.emptyGrams());
        diameter.show(make.bodyMillimetres());
        make.makerTestBar().ifPresent(test::show);
    }

    private void explain(BottleClass chosen) {
        bottleClass
                .hintProperty()
                .set(messages()
                        .of(
                                "form.bottle.class-hint",
                                Measure.PRESSURE.textWithUnit(
                                        chosen.workingPressureBar(),
                                        units(),
                                        messages().locale()),
                                chosen.basis()));
    }

    private String words(String key) {
        return messages().of("form.bottle." + key);
    }

    private NumberField number(String key, Measure measure, double least, double most) {
        return new NumberField(messages(), "bottle-" + key, words(key), measure, units(), least, most);
    }

    public List<Field<?>> fields() {
        return List.of(name, fill, brimful, bottleClass, colour, closure, wall, weight, diameter, test);
    }

    @Override
    public String what() {
        return messages().of("undo.settings.changed");
    }

    @Override
    public Cellar applyTo(Cellar current) {
        String id = before.map(BottleType::id)
                .orElseGet(() -> Slug.of(
                        name.value(),
                        "bottle",
                        current.bottleTypes().stream().map(BottleType::id).toList()));
        OptionalDouble makerTest = test.value();
        return current.withOwnBottles(Replacing.in(
                current.ownBottles(),
                new BottleType(
                        id,
                        name.value(),
                        colour.value(),
                        bottleClass.value(),
                        closure.value(),
                        fill.figure(),
                        brimful.figure(),
                        wall.figure(),
                        weight.figure(),
                        diameter.figure(),
                        makerTest)));
    }
}
