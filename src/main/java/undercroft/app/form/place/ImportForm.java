package undercroft.app.form.place;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.Field;
import undercroft.app.form.WordsField;
import undercroft.app.form.ZoneText;
import undercroft.cellar.Cellar;
import undercroft.cellar.FollowedLog;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.BackgroundTasks;
import undercroft.session.LogImport;
import undercroft.session.Workspace;
import undercroft.store.logger.Choices;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.Inspection;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.LoggerUnit;
import undercroft.store.logger.Question;
import undercroft.store.logger.text.TimeFormat;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/**
 * A logger's file on its way into a place: chosen, looked at, asked about where it is ambiguous, read in the background,
 * shown, and only then brought in. For the window's thread.
 */
public final class ImportForm {
    private final Messages messages;
    private final Workspace workspace;
    private final Place place;
    private final BackgroundTasks.Line line;
    private final ReadOnlyObjectWrapper<ImportPreview> preview = new ReadOnlyObjectWrapper<>(this, "preview");
    private final ReadOnlyObjectWrapper<ImportResult> result = new ReadOnlyObjectWrapper<>(this, "result");
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper(this, "working");
    private final ReadOnlyStringWrapper fault = new ReadOnlyStringWrapper(this, "fault", "");
    private final BooleanProperty follows = new SimpleBooleanProperty(this, "follows");
    private Path file;
    private Choices readWith;
    private Inspection found;
    private ChoiceField<Inspection.Column> column;
    private ChoiceField<TimeFormat> format;
    private ChoiceField<LoggerUnit> unit;
    private WordsField zone;
    private AtomicBoolean calledOff = new AtomicBoolean();
    private volatile double fractionDone;

    public ImportForm(Messages messages, Workspace workspace, Place place, BackgroundTasks tasks) {
        this.messages = messages;
        this.workspace = workspace;
        this.place = place;
        this.line = tasks.line();
    }

    /** Null until a file was looked at. */
    public ReadOnlyObjectProperty<ImportPreview> previewProperty() {
        return preview.getReadOnlyProperty();
    }

    /** Null until a file was read. */
    public ReadOnlyObjectProperty<ImportResult> resultProperty() {
        return result.getReadOnlyProperty();
    }

    /** True while a file is read in the background. */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /** Why the file cannot be used; empty while it can. */
    public ReadOnlyStringProperty faultProperty() {
        return fault.getReadOnlyProperty();
    }

    /** How much of the file is read, 0 to 1; of any thread. */
    public double fractionDone() {
        return fractionDone;
    }

    /** What is asked about the file, once it was looked at: which column, which order of the date, which unit. */
    public List<Field<?>> fields() {
        return found == null ? List.of() : List.of(column, format, unit, zone);
    }

    /** Whether what is added to the file later is taken in too. */
    public BooleanProperty followsProperty() {
        return follows;
    }

    /** Looks at a file in the background. */
    public void choose(Path chosen) {
        callOff();
        file = chosen;
        found = null;
        preview.set(null);
        result.set(null);
        fault.set("");
        working.set(true);
        ZoneId zone = workspace.getCellar().zone();
        line.run(
                () -> ImportPreview.of(messages, chosen, zone),
                made -> {
                    working.set(false);
                    ask(made);
                },
                this::fail);
    }

    private void ask(ImportPreview made) {
        found = made.inspection();
        column = new ChoiceField<>(
                messages,
                "import-column",
                messages.of("form.import.column"),
                found.columns(),
                each -> messages.of("form.import.column.words", each.name(), String.join(", ", each.examples())),
                asks(Question.About.COLUMN)
                        ? null
                        : found.columns().stream()
                                .filter(each -> each.index() == found.valueColumn())
                                .findFirst()
                                .orElse(found.columns().get(0)));
        List<TimeFormat> formats = found.formatProven() ? List.of(found.format()) : orders();
        format = new ChoiceField<>(
                messages,
                "import-format",
                messages.of("form.import.format"),
                formats,
                messages::nameOf,
                found.formatProven() ? found.format() : null);
        boolean unitAsked = asks(Question.About.UNIT);
        unit = new ChoiceField<>(
                messages,
                "import-unit",
                messages.of("form.import.unit"),
                Arrays.asList(LoggerUnit.values()),
                messages::nameOf,
                unitAsked ? null : found.unit());
        zone = new WordsField(
                messages,
                "import-zone",
                messages.of("form.import.zone"),
                found.zone().getId());
        zone.hintProperty().set(messages.of("form.import.zone-hint"));
        question(Question.About.COLUMN).ifPresent(column.hintProperty()::set);
        question(Question.About.DATE_ORDER).ifPresent(format.hintProperty()::set);
        question(Question.About.UNIT).ifPresent(unit.hintProperty()::set);
        fields().forEach(field -> field.listen(this::read));
        preview.set(made);
        read();
    }

    /** A year of four digits tells itself apart. */
    private List<TimeFormat> orders() {
        return found.exampleTime().matches(".*\\d{4}.*")
                ? List.of(TimeFormat.DAY_FIRST, TimeFormat.MONTH_FIRST)
                : List.of(TimeFormat.DAY_FIRST, TimeFormat.MONTH_FIRST, TimeFormat.YEAR_FIRST);
    }

    private boolean asks(Question.About about) {
        return question(about).isPresent();
    }

    private Optional<String> question(Question.About about) {
        return found.questions().stream()
                .filter(each -> each.about() == about)
                .map(question -> messages.of(question.asked()))
                .findFirst();
    }

    /** Reads the file as answered so far; does nothing while an answer is missing. */
    private void read() {
        callOff();
        result.set(null);
        fault.set("");
        if (column.chosenProperty().get() == null
                || format.chosenProperty().get() == null
                || unit.chosenProperty().get() == null) {
            return;
        }
        ZoneId clock;
        try {
            clock = ZoneText.parse("", zone.value());
        } catch (InvalidInput unreadable) {
            fault.set(messages.sentence(messages.what(unreadable)));
            return;
        }
        Choices choices = Choices.from(found)
                .withValueColumn(column.value().index())
                .withFormat(format.value())
                .withUnit(unit.value())
                .withZone(clock);
        readWith = choices;
        Path reading = file;
        AtomicBoolean stop = new AtomicBoolean();
        calledOff = stop;
        fractionDone = 0;
        working.set(true);
        Cellar cellar = workspace.getCellar();
        TimeSeries before = workspace.getState().temperatures().getOrDefault(place.id(), TimeSeries.empty());
        line.run(
                () -> {
                    try {
                        ImportedLog log = LoggerFile.read(reading, choices, fraction -> {
                            fractionDone = fraction;
                            return stop.get();
                        });
                        if (stop.get()) {
                            throw new CancellationException();
                        }
                        return ImportResult.of(
                                QuantityFormat.of(messages, cellar.settings().units(), cellar.zone()),
                                LogImport.of(cellar, place.id(), before, log),
                                before);
                    } catch (CancellationException stopped) {
                        throw new InvalidInput("", "form.import.called-off");
                    }
                },
                made -> {
                    working.set(false);
                    result.set(made);
                },
                this::fail);
    }

    private void fail(InvalidInput thrown) {
        working.set(false);
        fault.set(messages.sentence(messages.fault(thrown)));
    }

    /** Stops reading; what was read is forgotten. */
    public void callOff() {
        calledOff.set(true);
    }

    /** True once there is something to bring in. */
    public boolean canSave() {
        return result.get() != null && (follows.get() || !result.get().coming().changesNothing());
    }

    /** Brings the readings into the place; undoable. */
    public void save() {
        TimeSeries now = workspace.getState().temperatures().getOrDefault(place.id(), TimeSeries.empty());
        LogImport coming = LogImport.of(
                workspace.getCellar(), place.id(), now, result.get().coming().log());
        int changed = coming.merge().added() + coming.merge().replaced();
        String key = follows.get() ? "undo.place.followed" : "undo.temperatures.imported";
        coming.into(
                workspace,
                messages.of(key, place.name(), changed),
                follows.get() ? this::withFollowed : UnaryOperator.identity());
    }

    private Cellar withFollowed(Cellar cellar) {
        FollowedLog log = readWith.followed(file);
        return cellar.withPlace(cellar.place(place.id())
                .withTemperature(new TemperatureSource.Logged())
                .withFollowed(Optional.of(log)));
    }
}
