package undercroft.app.form;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import undercroft.app.form.batch.BatchForm;
import undercroft.app.form.place.PlaceForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Settings;
import undercroft.outlook.OutlookSamples;
import undercroft.quantity.UnitSystem;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

/** A cellar to fill forms about, and fields found by their ids. */
public final class FormSamples {
    public static final Instant NOW = OutlookSamples.NOW;
    public static final Cellar CELLAR = OutlookSamples.cellar();
    public static final Cellar US_CELLAR = CELLAR.withSettings(new Settings(UnitSystem.US, 0));

    private FormSamples() {}

    /** A capped batch with bottles left, no reading among the ones asked for and one stay. */
    public static Batch batch() {
        return CELLAR.batches().stream()
                .filter(batch -> batch.cappedAt().isPresent())
                .filter(batch -> batch.lots().get(0).left() > 3)
                .filter(batch -> batch.lots().get(0).stays().size() == 1)
                .findFirst()
                .orElseThrow();
    }

    public static Lot lot() {
        return batch().lots().get(0);
    }

    static Instant beforeCapping() {
        return lot().stays().get(0).from().minus(Duration.ofDays(2));
    }

    public static Field<?> field(Form form, String id) {
        return form.allFields().stream()
                .filter(field -> field.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field " + id));
    }

    /** Types into a field; of a moment, into its date, or after a bar into its time. */
    public static void type(Form form, String id, String text) {
        Field<?> field = field(form, id);
        if (field instanceof NumberField number) {
            number.textProperty().set(text);
        } else if (field instanceof WordsField words) {
            words.textProperty().set(text);
        } else if (field instanceof MonthDayField day) {
            day.textProperty().set(text);
        } else {
            String[] parts = text.split("\\|", -1);
            ((DateTimeField) field).dateProperty().set(parts[0]);
            if (parts.length > 1) {
                ((DateTimeField) field).timeProperty().set(parts[1]);
            }
        }
    }

    @SuppressWarnings("unchecked")
    public static <T> void choose(Form form, String id, T choice) {
        ((ChoiceField<T>) field(form, id)).chosenProperty().set(choice);
    }

    public static void tick(Form form, String id, boolean ticked) {
        ((BooleanField) field(form, id)).tickedProperty().set(ticked);
    }

    /** The sentence under a field once saving was tried. */
    public static String fault(Form form, String id) {
        form.showFaults();
        return field(form, id).faultProperty().get();
    }

    /** A workspace that keeps nothing on disk and does all at once. */
    public static Workspace workspace(Cellar cellar) {
        return SampleWorkspace.of(cellar);
    }

    public static PlaceForm newPlace() {
        return new PlaceForm(Messages.english(), CELLAR, Optional.empty());
    }

    public static BatchForm newBatch(Cellar cellar) {
        return new BatchForm(Messages.english(), cellar, Optional.empty(), NOW);
    }
}
