package undercroft.app.form.cellar;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.app.form.ZoneText;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Settings;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.session.Workspace;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** What holds for the whole cellar. Own bottles and sugars are changed in a draft that counts once the form is saved. */
public final class SettingsForm extends Form {
    private final WordsField name;
    private final ChoiceField<UnitSystem> unitSystem;
    private final NumberField altitude;
    private final WordsField zone;
    private final WordsField page;
    private final ChoiceField<Teachers> teachers;
    private final Instant now;
    private final ReadOnlyObjectWrapper<Cellar> draft = new ReadOnlyObjectWrapper<>(this, "draft");

    /** Which batches teach about later ones. */
    public enum Teachers {
        ALL,
        SINCE_A_DAY,
        FROM_NOW_ON
    }

    /** {@code now} is when all that was learned may be forgotten. */
    public SettingsForm(Messages messages, Cellar cellar, Instant now) {
        super(messages, cellar);
        this.now = now;
        draft.set(cellar);
        name = add(
                new WordsField(messages(), "settings-name", messages().of("form.settings.name"), cellar.name())
                        .required(),
                "name");
        unitSystem = add(new ChoiceField<>(
                messages(),
                "settings-units",
                messages().of("form.settings.units"),
                List.of(UnitSystem.values()),
                each -> messages().of(each == UnitSystem.US ? "form.settings.units.us" : "form.settings.units.metric"),
                cellar.settings().units()));
        altitude = add(
                new NumberField(
                                messages(),
                                "settings-altitude",
                                messages().of("form.settings.altitude"),
                                Measure.ALTITUDE,
                                units(),
                                -400,
                                5_000)
                        .starting(cellar.settings().altitudeMetres()),
                "altitudeMetres");
        altitude.hintProperty().set(messages().of("form.settings.altitude-hint"));
        zone = add(
                new WordsField(
                                messages(),
                                "settings-zone",
                                messages().of("form.settings.zone"),
                                cellar.zone().getId())
                        .required(),
                "zone");
        zone.hintProperty().set(messages().of("form.settings.zone-hint"));
        page = add(
                new WordsField(
                        messages(),
                        "settings-page",
                        messages().of("form.settings.page"),
                        cellar.settings().pageAddress().orElse("")),
                "pageAddress");
        page.hintProperty().set(messages().of("form.settings.page-hint"));
        Optional<Instant> since = cellar.settings().learnsSince();
        teachers = add(new ChoiceField<>(
                messages(),
                "settings-teachers",
                messages().of("form.settings.teachers"),
                since.isEmpty()
                        ? List.of(Teachers.ALL, Teachers.FROM_NOW_ON)
                        : List.of(Teachers.SINCE_A_DAY, Teachers.ALL, Teachers.FROM_NOW_ON),
                each -> words(each, since.orElse(now)),
                since.isEmpty() ? Teachers.ALL : Teachers.SINCE_A_DAY));
        teachers.hintProperty().set(messages().of("form.settings.teachers-hint"));
        draft.addListener((property, before, after) -> changed());
        begin();
    }

    public List<Field<?>> fields() {
        return List.of(name, unitSystem, altitude, zone, page, teachers);
    }

    private String words(Teachers which, Instant since) {
        return switch (which) {
            case ALL -> messages().of("form.settings.teachers.all");
            case SINCE_A_DAY ->
                messages()
                        .of(
                                "form.settings.teachers.since",
                                QuantityFormat.of(messages(), units(), cellar().zone())
                                        .day(since, Instant.EPOCH));
            case FROM_NOW_ON -> messages().of("form.settings.teachers.none");
        };
    }

    private Optional<Instant> learnsSince(Cellar current) {
        return switch (teachers.value()) {
            case ALL -> Optional.empty();
            case SINCE_A_DAY -> current.settings().learnsSince();
            case FROM_NOW_ON -> Optional.of(now);
        };
    }

    /** The cellar as it would be with the own bottles and sugars told so far. */
    public ReadOnlyObjectProperty<Cellar> draftProperty() {
        return draft.getReadOnlyProperty();
    }

    public Cellar draft() {
        return draft.get();
    }

    /** Changes own bottles or sugars in the draft. */
    public void change(UnaryOperator<Cellar> change) {
        draft.set(change.apply(draft.get()));
    }

    /** Takes a make out of the draft; an {@link InvalidInput} that names the batches while any is in it. */
    public void remove(BottleType make) {
        boolean standsIn = standard(Bottles.STANDARD, make);
        refuseWhile(standsIn ? List.of() : batchesIn(make), make);
        change(cellar -> cellar.withOwnBottles(Replacing.without(cellar.ownBottles(), make.id())));
    }

    /** Takes a sugar out of the draft; an {@link InvalidInput} that names the batches while any was primed with it. */
    public void remove(Sugar sugar) {
        boolean standsIn = standard(Sugars.STANDARD, sugar);
        refuseWhile(standsIn ? List.of() : batchesWith(sugar), sugar);
        change(cellar -> cellar.withOwnSugars(Replacing.without(cellar.ownSugars(), sugar.id())));
    }

    private static boolean standard(List<? extends Listed> list, Listed entry) {
        return list.stream().anyMatch(each -> each.id().equals(entry.id()));
    }

    private List<Batch> batchesIn(BottleType make) {
        return cellar().batches().stream()
                .filter(batch ->
                        batch.lots().stream().anyMatch(lot -> lot.bottleTypeId().equals(make.id())))
                .toList();
    }

    private List<Batch> batchesWith(Sugar sugar) {
        return cellar().batches().stream()
                .filter(batch -> batch.priming().doses().stream()
                        .anyMatch(dose -> dose.sugarId().equals(sugar.id())))
                .toList();
    }

    private static void refuseWhile(List<Batch> users, Listed entry) {
        if (!users.isEmpty()) {
            String names = users.stream().map(Batch::name).collect(Collectors.joining(", "));
            throw new InvalidInput("", "form.settings.in-use", entry, names);
        }
    }

    @Override
    public String what() {
        return messages().of("undo.settings.changed");
    }

    /** Units change how things are shown, now and whatever is taken back; the rest is a step of its own. */
    public void save(Workspace workspace) {
        workspace.change(
                what(), cellar -> inUnits(applyTo(cellar), cellar.settings().units()));
        workspace.changeThroughout(cellar -> inUnits(cellar, unitSystem.value()));
    }

    private static Cellar inUnits(Cellar cellar, UnitSystem units) {
        return cellar.withSettings(cellar.settings().withUnits(units));
    }

    @Override
    public Cellar applyTo(Cellar current) {
        return current.withName(name.value())
                .withZone(ZoneText.parse("zone", zone.value()))
                .withSettings(new Settings(
                        unitSystem.value(),
                        altitude.figure(),
                        Optional.of(page.value().strip()).filter(text -> !text.isEmpty()),
                        learnsSince(current)))
                .withOwnBottles(draft.get().ownBottles())
                .withOwnSugars(draft.get().ownSugars());
    }
}
