package undercroft.app.form.cellar;

import java.util.List;
import java.util.Optional;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.Slug;
import undercroft.app.form.WordsField;
import undercroft.calc.priming.SugarLabel;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Cellar;
import undercroft.wording.Messages;

/** A sugar of the user's own, from what its packet says. */
public final class SugarForm extends Form {
    private final Optional<Sugar> before;
    private final WordsField name;
    private final NumberField percent;
    private final ChoiceField<SugarLabel.Kind> kind;

    /** Without {@code before} a new sugar. */
    public SugarForm(Messages messages, Cellar cellar, Optional<Sugar> before) {
        super(messages, cellar);
        this.before = before;
        Optional<SugarLabel> label = before.flatMap(SugarForm::labelOf);
        name = add(
                new WordsField(
                                messages(),
                                "sugar-name",
                                messages().of("form.sugar.name"),
                                before.map(Sugar::label).orElse(""))
                        .required(),
                "name");
        percent = add(
                new NumberField(
                        messages(),
                        "sugar-percent",
                        messages().of("form.sugar.percent"),
                        Measure.PERCENT,
                        units(),
                        5,
                        100),
                "sugarsPercent");
        label.ifPresent(was -> percent.show(was.sugarsPercent()));
        kind = add(new ChoiceField<>(
                messages(),
                "sugar-kind",
                messages().of("form.sugar.kind"),
                List.of(SugarLabel.Kind.DISACCHARIDE, SugarLabel.Kind.HEXOSE),
                each -> messages()
                        .of(each == SugarLabel.Kind.HEXOSE ? "form.sugar.kind.hexose" : "form.sugar.kind.disaccharide"),
                label.map(SugarLabel::kind).orElse(SugarLabel.Kind.DISACCHARIDE)));
        percent.hintProperty().set(messages().of("form.sugar.percent-hint"));
        begin();
    }

    /** The label a sugar was made from, worked back from its yield; empty for a sugar from elsewhere. */
    private static Optional<SugarLabel> labelOf(Sugar sugar) {
        for (SugarLabel.Kind kind : SugarLabel.Kind.values()) {
            double pure = new SugarLabel(sugar.label(), 100, kind)
                    .toSugar(sugar.id())
                    .yield()
                    .median();
            double percent = Math.rint(sugar.yield().median() / pure * 1e6) / 1e4;
            if (percent >= 5 && percent <= 100) {
                SugarLabel label = new SugarLabel(sugar.label(), percent, kind);
                if (label.toSugar(sugar.id()).basis().equals(sugar.basis())) {
                    return Optional.of(label);
                }
            }
        }
        return Optional.empty();
    }

    public List<Field<?>> fields() {
        return List.of(name, percent, kind);
    }

    @Override
    public String what() {
        return messages().of("undo.settings.changed");
    }

    @Override
    public Cellar applyTo(Cellar current) {
        String id = before.map(Sugar::id)
                .orElseGet(() -> Slug.of(
                        name.value(),
                        "sugar",
                        current.sugars().stream().map(Sugar::id).toList()));
        Sugar made = new SugarLabel(name.value(), percent.figure(), kind.value()).toSugar(id);
        return current.withOwnSugars(Replacing.in(current.ownSugars(), made));
    }
}
