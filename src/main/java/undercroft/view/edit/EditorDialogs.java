package undercroft.view.edit;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import undercroft.app.form.Field;
import undercroft.app.form.batch.DrawForm;
import undercroft.app.form.batch.ExperimentForm;
import undercroft.app.form.batch.MoveForm;
import undercroft.app.form.batch.NotesForm;
import undercroft.app.form.batch.ReadingForm;
import undercroft.app.form.batch.StocktakeForm;
import undercroft.app.form.cellar.BrokerForm;
import undercroft.app.form.place.DialForm;
import undercroft.app.form.place.ImportForm;
import undercroft.app.servings.ServingForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.session.BackgroundTasks;
import undercroft.session.BrokerChoice;
import undercroft.session.Forecasts;
import undercroft.session.OpenCellar;
import undercroft.session.Workspace;
import undercroft.store.Broker;
import undercroft.view.kit.Editors;
import undercroft.view.kit.form.FieldControls;
import undercroft.view.kit.form.FormDialogs;
import undercroft.view.kit.form.FormGrid;
import undercroft.view.kit.form.QuestionDialog;
import undercroft.wording.ExperimentWords;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** The dialogs over the main window. */
public final class EditorDialogs implements Editors {
    private final Messages messages;
    private final Workspace workspace;
    private final Forecasts forecasts;
    private final BackgroundTasks tasks;
    private final Clock clock;
    private final BrokerChoice brokers;
    private final Supplier<Window> owner;
    private final FileQuestions questions;
    private final FormDialogs dialogs;

    /**
     * The dialogs of one window.
     *
     * @param forecasts tells which bottles want caution
     * @param tasks reads files
     * @param brokers where live sensors are heard
     * @param questions asks for files
     * @param owner the main window, asked each time
     */
    public EditorDialogs(
            Messages messages,
            Workspace workspace,
            Forecasts forecasts,
            BackgroundTasks tasks,
            Clock clock,
            BrokerChoice brokers,
            ObservableBooleanValue dark,
            FileQuestions questions,
            Supplier<Window> owner) {
        this.questions = questions;
        this.messages = messages;
        this.workspace = workspace;
        this.forecasts = forecasts;
        this.tasks = tasks;
        this.clock = clock;
        this.brokers = brokers;
        this.owner = owner;
        this.dialogs = new FormDialogs(messages, workspace, owner, dark);
    }

    /** Of all that an open cellar has. */
    public EditorDialogs(
            Messages messages,
            OpenCellar cellar,
            ObservableBooleanValue dark,
            FileQuestions questions,
            Supplier<Window> owner) {
        this(
                messages,
                cellar.workspace(),
                cellar.forecasts(),
                cellar.tasks(),
                cellar.clock(),
                cellar.sensors(),
                dark,
                questions,
                owner);
    }

    private Cellar cellar() {
        return workspace.getCellar();
    }

    @Override
    public void addPlace() {
        PlaceDialog.open(dialogs, cellar(), Optional.empty());
    }

    @Override
    public void editPlace(Place place) {
        PlaceDialog.open(dialogs, cellar(), Optional.of(place));
    }

    @Override
    public void addBatch() {
        if (cellar().places().isEmpty()) {
            QuestionDialog.ask(
                    dialogs,
                    owner.get(),
                    messages.of("form.batch.no-place.title"),
                    messages.of("form.batch.no-place.sentence"),
                    Optional.of(messages.of("form.place.title.add")),
                    this::addPlace);
            return;
        }
        BatchDialog.open(dialogs, cellar(), Optional.empty(), clock.instant());
    }

    @Override
    public void editBatch(Batch batch) {
        BatchDialog.open(dialogs, cellar(), Optional.of(batch), clock.instant());
    }

    @Override
    public void move(Batch batch, Lot lot) {
        if (hasNone(batch, lot)) {
            return;
        }
        MoveForm form = moveForm(
                batch,
                lot,
                LotDialogs.offered(cellar(), outlook(), batch.id(), lot.id()),
                LotDialogs.wantsCover(outlook(), batch.id(), lot.id()));
        dialogs.open(messages.of("form.move.title", batch.name()), form, content(batch, lot, form.fields()));
    }

    @Override
    public void moveTo(Batch batch, Lot lot, Place place) {
        MoveForm form = moveForm(batch, lot, Optional.of(place), false);
        dialogs.open(messages.of("form.move.title", batch.name()), form, content(batch, lot, form.fields()));
    }

    private MoveForm moveForm(Batch batch, Lot lot, Optional<Place> offered, boolean covered) {
        return new MoveForm(
                messages,
                cellar(),
                batch,
                lot,
                clock.instant(),
                offered,
                covered,
                place -> LotDialogs.warning(messages, outlook(), batch.id(), lot.id(), place));
    }

    @Override
    public void draw(Batch batch, Lot lot) {
        if (hasNone(batch, lot)) {
            return;
        }
        DrawForm form = new DrawForm(messages, cellar(), batch, lot, clock.instant());
        dialogs.open(messages.of("form.draw.title", batch.name()), form, content(batch, lot, form.fields()));
    }

    @Override
    public void read(Batch batch, Lot lot) {
        ReadingForm form = new ReadingForm(messages, cellar(), batch, lot, clock.instant());
        dialogs.open(messages.of("form.reading.title", batch.name()), form, content(batch, lot, form.fields()));
    }

    @Override
    public void experiment(Batch batch, Lot lot) {
        if (hasNone(batch, lot)) {
            return;
        }
        if (lot.gauge().isEmpty()) {
            experiment(batch, lot, List.of());
            return;
        }
        Workspace.State state = workspace.getState();
        Instant now = clock.instant();
        QuantityFormat words = QuantityFormat.of(
                messages, state.cellar().settings().units(), state.cellar().zone());
        tasks.run(
                () -> new ExperimentWords(words)
                        .lines(Outlooks.experiment(
                                state.cellar(), state.temperatures(), now, batch.id(), Optional.of(lot.id()))),
                lines -> experiment(batch, lot, lines),
                notRead -> experiment(batch, lot, List.of()));
    }

    /** With what the experiment says so far. */
    private void experiment(Batch batch, Lot lot, List<String> lines) {
        ExperimentForm form = new ExperimentForm(messages, cellar(), batch, lot, clock.instant());
        VBox content = new VBox(8);
        for (String line : lines) {
            Label said = new Label(line);
            said.setWrapText(true);
            said.getStyleClass().add("faint");
            content.getChildren().add(said);
        }
        content.getChildren().add(content(batch, lot, form.fields()));
        dialogs.open(messages.of("form.experiment.title", batch.name()), form, content);
    }

    @Override
    public void addServing(ServingForm.Wish wish) {
        boolean pourable = !cellar().places().isEmpty()
                && cellar().batches().stream().anyMatch(batch -> batch.leftAt(clock.instant()) > 0);
        if (!pourable) {
            QuestionDialog.tell(
                    dialogs,
                    owner.get(),
                    messages.of("form.serving.none.title"),
                    messages.of("form.serving.none.sentence"));
            return;
        }
        ServingForm form = ServingForm.adding(messages, cellar(), wish, outlook(), clock.instant());
        dialogs.open(messages.of("form.serving.title.add"), form, new FormGrid().fields(form.fields()));
    }

    @Override
    public void editServing(Serving serving) {
        ServingForm form = ServingForm.changing(messages, cellar(), serving, outlook(), clock.instant());
        dialogs.open(messages.of("form.serving.title.change"), form, new FormGrid().fields(form.fields()));
    }

    private Optional<CellarOutlook> outlook() {
        return Optional.ofNullable(forecasts.outlookProperty().get());
    }

    @Override
    public void editNotes(Batch batch) {
        NotesForm form = new NotesForm(messages, cellar(), batch);
        VBox content = new VBox(
                FieldControls.of(form.notes()), FormGrid.fault(form.notes().faultProperty()));
        dialogs.open(messages.of("form.notes.title", batch.name()), form, content);
    }

    @Override
    public void count(Batch batch) {
        StocktakeForm form = new StocktakeForm(cellar(), batch, clock.instant(), messages);
        dialogs.open(messages.of("form.stocktake.title", batch.name()), form, new FormGrid().fields(form.fields()));
    }

    @Override
    public void importInto(Place place) {
        new ImportDialog(dialogs, place.name(), new ImportForm(messages, workspace, place, tasks), questions).open();
    }

    @Override
    public void readDial(Place place) {
        DialForm form = new DialForm(messages, cellar(), place, clock.instant());
        dialogs.open(
                owner.get(),
                messages.of("form.dial.title", place.name()),
                form,
                new FormGrid().fields(form.fields()),
                () -> form.save(workspace));
    }

    @Override
    public void editSettings() {
        SettingsDialog.open(dialogs, workspace, clock.instant());
    }

    /** One whose file cannot be read is named anew. */
    @Override
    public void editBroker() {
        if (!brokers.mayListen()) {
            QuestionDialog.tell(
                    dialogs, owner.get(), messages.of("form.broker.title"), messages.of("form.broker.not-here"));
            return;
        }
        brokers.broker(this::editBroker, unreadable -> editBroker(Optional.empty()));
    }

    private void editBroker(Optional<Broker> before) {
        BrokerForm form = new BrokerForm(messages, cellar(), before);
        dialogs.open(
                owner.get(),
                messages.of("form.broker.title"),
                form,
                new FormGrid().fields(form.fields()),
                () -> brokers.turnTo(form.broker()));
    }

    private Node content(Batch batch, Lot lot, List<Field<?>> fields) {
        return LotDialogs.content(messages, outlook(), batch.id(), lot.id(), fields);
    }

    private boolean hasNone(Batch batch, Lot lot) {
        if (lot.left() > 0) {
            return false;
        }
        QuestionDialog.tell(
                dialogs,
                owner.get(),
                messages.of("form.none-left.title"),
                messages.of("form.none-left.sentence", batch.name()));
        return true;
    }
}
