package undercroft.app.form.batch;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Group;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Beer;
import undercroft.cellar.Yeast;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;

/** The part of a batch's form that is about the beer and its yeast. */
public final class BeerFields {
    private final Messages messages;
    private final ChoiceField<BeerStyle> kind;
    private final NumberField abv;
    private final NumberField ibu;
    private final NumberField ebc;
    private final NumberField reduced;
    private final NumberField warmest;
    private final NumberField gravity;
    private final boolean gravityIncludesPriming;
    private final NumberField finalGravity;
    private final ChoiceField<YeastStrain> strain;
    private final ChoiceField<YeastState> state;
    private final ChoiceField<Flocculation> flocculation;
    private final BooleanField dextrins;

    public BeerFields(Group form, UnitSystem units, Optional<Beer> beer, Optional<Yeast> yeast) {
        messages = form.messages();
        kind = form.add(ChoiceField.of(
                messages,
                "batch-kind",
                words("kind"),
                BeerStyle.class,
                beer.map(Beer::kind).orElse(BeerStyle.PALE_ALE)));
        abv = form.add(
                new NumberField(messages, "batch-abv", words("abv"), Measure.PERCENT, units, 0, 20)
                        .starting(of(beer.map(Beer::abvPercent))),
                "abvPercent");
        ibu = form.add(
                new NumberField(messages, "batch-ibu", words("ibu"), Measure.BITTERNESS, units, 0, 200)
                        .starting(beer.map(Beer::bitternessIbu).orElse(25.0)),
                "bitternessIbu");
        ebc = form.add(
                new NumberField(messages, "batch-ebc", words("ebc"), Measure.COLOUR, units, 1, 200)
                        .starting(beer.map(Beer::colourEbc).orElse(15.0)),
                "colourEbc");
        reduced = form.add(
                new NumberField(messages, "batch-reduced", words("reduced"), Measure.PERCENT, units, 0, 100)
                        .starting(beer.map(Beer::reducedHopShare).orElse(0.0) * 100),
                "reducedHopShare");
        warmest = form.add(
                new NumberField(messages, "batch-warmest", words("warmest"), Measure.TEMPERATURE, units, -2, 45)
                        .starting(beer.map(Beer::warmestCelsius).orElse(20.0)),
                "warmestCelsius");
        gravity = form.add(
                new NumberField(messages, "batch-gravity", words("gravity"), Measure.GRAVITY, units, 0.980, 1.200)
                        .optional()
                        .starting(beer.map(Beer::gravityAtBottling).orElse(OptionalDouble.empty())),
                "gravityAtBottling");
        finalGravity = form.add(
                new NumberField(messages, "batch-final", words("final"), Measure.GRAVITY, units, 0.980, 1.200)
                        .optional()
                        .starting(beer.map(Beer::expectedFinalGravity).orElse(OptionalDouble.empty())),
                "expectedFinalGravity");
        strain = form.add(ChoiceField.of(
                messages,
                "batch-strain",
                words("strain"),
                YeastStrain.class,
                yeast.map(Yeast::strain).orElse(YeastStrain.ALE)));
        state = form.add(ChoiceField.of(
                messages,
                "batch-state",
                words("state"),
                YeastState.class,
                yeast.map(Yeast::state).orElse(YeastState.ORDINARY)));
        flocculation = form.add(ChoiceField.of(
                messages,
                "batch-settling",
                words("settling"),
                Flocculation.class,
                yeast.map(Yeast::flocculation).orElse(Flocculation.ORDINARY)));
        dextrins = form.add(new BooleanField(
                messages,
                "batch-dextrins",
                words("dextrins"),
                yeast.map(Yeast::fermentsDextrins).orElse(false)));
        ebc.hintProperty().set(words("ebc-hint"));
        reduced.hintProperty().set(words("reduced-hint"));
        warmest.hintProperty().set(words("warmest-hint"));
        gravityIncludesPriming = beer.map(Beer::gravityIncludesPriming).orElse(false);
        finalGravity.hintProperty().set(words("final-hint"));
        dextrins.hintProperty().set(words("dextrins-hint"));
    }

    private String words(String key) {
        return messages.of("form.batch." + key);
    }

    private static OptionalDouble of(Optional<Double> figure) {
        return figure.isPresent() ? OptionalDouble.of(figure.get()) : OptionalDouble.empty();
    }

    /** About the beer, in order. */
    public List<Field<?>> beerFields() {
        return List.of(kind, abv, ibu, ebc, reduced, warmest, gravity, finalGravity);
    }

    /** About the yeast, in order. */
    public List<Field<?>> yeastFields() {
        return List.of(strain, state, flocculation, dextrins);
    }

    /** What carbonation and sugar depend on, in order. */
    public List<Field<?>> strengthFields() {
        return List.of(kind, abv, warmest);
    }

    /** What light and age depend on, in order. */
    public List<Field<?>> hopFields() {
        return List.of(ibu, ebc, reduced);
    }

    public NumberField finalGravity() {
        return finalGravity;
    }

    public ChoiceField<BeerStyle> kind() {
        return kind;
    }

    public Beer beer() {
        return new Beer(
                kind.value(),
                abv.figure(),
                ibu.figure(),
                reduced.figure() / 100,
                ebc.figure(),
                warmest.figure(),
                gravity.value(),
                gravityIncludesPriming,
                finalGravity.value());
    }

    public Yeast yeast() {
        return new Yeast(strain.value(), state.value(), flocculation.value(), dextrins.value());
    }
}
