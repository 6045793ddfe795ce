package undercroft.app.bottling;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.app.form.batch.BatchForm;
import undercroft.bottling.BottlingDay;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.PrintedLabel;
import undercroft.session.Workspace;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/**
 * Plans of bottling days and the one that is open. What is typed reaches the cellar with {@link #keep}; all of it on one
 * page is taken back together. For the window's thread.
 */
public final class BottlingViewModel {
    private final Messages messages;
    private final Workspace workspace;
    private final Clock clock;
    private final Consumer<String> whenCapped;
    private final ReadOnlyObjectWrapper<List<Batch>> plans = new ReadOnlyObjectWrapper<>(this, "drafts", List.of());
    private final ReadOnlyObjectWrapper<PlanForm> form = new ReadOnlyObjectWrapper<>(this, "form");
    private final ReadOnlyObjectWrapper<BottlingPage> screen =
            new ReadOnlyObjectWrapper<>(this, "screen", BottlingPage.BEER);
    private String batchId = "";
    private Batch kept;
    private Batch seen;
    private Cellar formCellar;
    private CappingForm capping;
    private BottlingDay cappingDay;
    private Optional<PrintedLabel> label = Optional.empty();
    private int visit;

    /** {@code whenCapped} is told the batch that now stands on the shelf. */
    public BottlingViewModel(Messages messages, Workspace workspace, Clock clock, Consumer<String> whenCapped) {
        this.messages = messages;
        this.workspace = workspace;
        this.clock = clock;
        this.whenCapped = whenCapped;
        workspace.stateProperty().addListener((property, before, after) -> follow());
        follow();
    }

    /** Batches that are not capped yet. */
    public ReadOnlyObjectProperty<List<Batch>> plansProperty() {
        return plans.getReadOnlyProperty();
    }

    /** What the open plan asks; null while none is open. */
    public ReadOnlyObjectProperty<PlanForm> formProperty() {
        return form.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<BottlingPage> screenProperty() {
        return screen.getReadOnlyProperty();
    }

    public Cellar cellar() {
        return workspace.getCellar();
    }

    /** Quantities in the cellar's units. */
    public QuantityFormat words() {
        Cellar cellar = workspace.getCellar();
        return QuantityFormat.of(messages, cellar.settings().units(), cellar.zone());
    }

    public LocalDate today() {
        return clock.instant().atZone(workspace.getCellar().zone()).toLocalDate();
    }

    public NewPlanForm newPlan() {
        return new NewPlanForm(messages, workspace.getCellar());
    }

    /** Begins a plan and opens it. */
    public void start(NewPlanForm begun) {
        String id = begun.idIn(workspace.getCellar());
        workspace.change(begun.what(), begun::applyTo);
        open(id);
    }

    /** Opens the plan of a batch that is not capped. */
    public void open(String id) {
        keep();
        batchId = id;
        screen.set(BottlingPage.BEER);
        visit++;
        reopen();
    }

    /** The beer a draft is about. */
    public String litres(Batch draft) {
        return words().litres(draft.priming().beerLitres());
    }

    /** Back to the list of plans. */
    public void close() {
        keep();
        forget();
    }

    private void forget() {
        batchId = "";
        kept = null;
        capping = null;
        label = Optional.empty();
        form.set(null);
    }

    /** Throws a plan away; undo brings it back. */
    public void delete(Batch planned) {
        workspace.change(
                messages.of("undo.batch.deleted", planned.name()), cellar -> BatchForm.without(cellar, planned.id()));
    }

    /** Turns to a page; what was typed is kept first. */
    public void show(BottlingPage wanted) {
        keep();
        if (wanted != screen.get()) {
            visit++;
            screen.set(wanted);
        }
    }

    /** Puts what was typed into the cellar, if anything was. */
    public void keep() {
        if (form.get() != null && isChanged()) {
            String group = batchId + "/" + visit;
            Batch made = form.get().madeProperty().get();
            kept = made;
            workspace.changeTogether(form.get().what(), group, cellar -> cellar.withBatch(made));
        }
    }

    private boolean isChanged() {
        return !form.get().madeProperty().get().equals(kept);
    }

    /** The list to work through; empty while the plan does not add up. */
    public Optional<DayList> dayList() {
        return day().map(day -> new DayList(workspace, clock, form.get(), day, batch -> kept = batch));
    }

    private Optional<BottlingDay> day() {
        return form.get() == null ? Optional.empty() : form.get().dayProperty().get();
    }

    /** The papers of the day; empty while the plan does not add up. */
    public Optional<DayPrintouts> printouts() {
        return day().map(day -> new DayPrintouts(
                form.get().madeProperty().get().name(),
                day,
                words(),
                today(),
                workspace.getState().temperatures(),
                clock.instant()));
    }

    /** What was really done; the same as long as the plan stays as it is. Empty while it does not add up. */
    public Optional<CappingForm> capping() {
        Optional<BottlingDay> day = day();
        if (day.isEmpty()) {
            return Optional.empty();
        }
        if (capping == null || !day.get().plan().equals(cappingDay.plan())) {
            keep();
            cappingDay = day.get();
            Batch planned = form.get().madeProperty().get();
            capping = new CappingForm(
                    messages, workspace.getCellar().withBatch(planned), planned, cappingDay, clock.instant());
        }
        return Optional.of(capping);
    }

    /** Labels were made; the batch remembers it once it is capped. */
    public void labelled(PrintedLabel made) {
        label = Optional.of(made);
    }

    /** Caps: the batch leaves the plans and stands on the shelf. */
    public void cap(CappingForm done) {
        keep();
        String id = batchId;
        Batch planned = form.get().madeProperty().get();
        Optional<PrintedLabel> printed = label;
        workspace.change(done.what(), cellar -> {
            Cellar capped = done.applyTo(cellar.withBatch(planned));
            return printed.map(made -> made.on(id).apply(capped)).orElse(capped);
        });
        forget();
        whenCapped.accept(id);
    }

    private void follow() {
        Cellar cellar = workspace.getCellar();
        plans.set(cellar.batches().stream()
                .filter(batch -> batch.cappedAt().isEmpty())
                .toList());
        if (batchId.isEmpty()) {
            return;
        }
        Optional<Batch> stored =
                plans.get().stream().filter(batch -> batch.id().equals(batchId)).findFirst();
        if (stored.isEmpty()) {
            forget();
        } else if (listsChanged(cellar)
                || !(stored.get().equals(kept) || stored.get().equals(seen))) {
            reopen();
        } else {
            seen = stored.get();
        }
    }

    private boolean listsChanged(Cellar cellar) {
        return !cellar.settings().equals(formCellar.settings())
                || !cellar.ownBottles().equals(formCellar.ownBottles())
                || !cellar.ownSugars().equals(formCellar.ownSugars())
                || !cellar.places().equals(formCellar.places());
    }

    private void reopen() {
        formCellar = workspace.getCellar();
        capping = null;
        seen = formCellar.batch(batchId);
        PlanForm opened = new PlanForm(messages, formCellar, seen, today());
        kept = opened.madeProperty().get();
        form.set(opened);
    }
}
