package undercroft.app.servings;

import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.Measure;
import undercroft.app.form.NumberField;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** Guests to come: when, how many, how many bottles for each. Changes nothing; the answer is which batch to pour. */
public final class OccasionForm extends Form {
    private static final int DAYS_AHEAD = 7;

    private final Instant now;
    private final DateTimeField at;
    private final NumberField guests;
    private final NumberField each;
    private final ReadOnlyObjectWrapper<Optional<Occasion>> occasion =
            new ReadOnlyObjectWrapper<>(this, "occasion", Optional.empty());

    /** When how many bottles are wanted. */
    public record Occasion(Instant at, int bottles) {}

    public OccasionForm(Messages messages, Cellar cellar, Instant now) {
        super(messages, cellar);
        this.now = now;
        Instant evening = now.atZone(cellar.zone())
                .toLocalDate()
                .plusDays(DAYS_AHEAD)
                .atTime(LocalTime.of(18, 0))
                .atZone(cellar.zone())
                .toInstant();
        at = add(
                new DateTimeField(messages(), "occasion-at", messages().of("form.occasion.at"), cellar.zone(), evening),
                "at");
        guests = add(
                new NumberField(
                                messages(),
                                "occasion-guests",
                                messages().of("form.occasion.guests"),
                                Measure.BOTTLES,
                                units(),
                                1,
                                1000)
                        .starting(4),
                "guests");
        each = add(
                new NumberField(
                                messages(),
                                "occasion-each",
                                messages().of("form.occasion.each"),
                                Measure.BOTTLES,
                                units(),
                                1,
                                10)
                        .starting(2),
                "each");
        begin();
        at.dateProperty().addListener((property, was, is) -> read());
        at.timeProperty().addListener((property, was, is) -> read());
        guests.textProperty().addListener((property, was, is) -> read());
        each.textProperty().addListener((property, was, is) -> read());
        read();
    }

    public DateTimeField at() {
        return at;
    }

    public NumberField guests() {
        return guests;
    }

    public NumberField each() {
        return each;
    }

    public List<Field<?>> fields() {
        return List.of(at, guests, each);
    }

    /** Empty while it cannot be read. */
    public ReadOnlyObjectProperty<Optional<Occasion>> occasionProperty() {
        return occasion.getReadOnlyProperty();
    }

    private void read() {
        allFields().forEach(Field::leave);
        occasion.set(
                canSave() ? Optional.of(new Occasion(at.value(), guests.count() * each.count())) : Optional.empty());
    }

    @Override
    public String what() {
        return "";
    }

    @Override
    public Cellar applyTo(Cellar current) {
        if (!at.value().isAfter(now)) {
            throw new InvalidInput("at", "form.serving.past");
        }
        return current;
    }
}
