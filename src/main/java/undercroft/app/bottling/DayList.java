package undercroft.app.bottling;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.Checklist;
import undercroft.bottling.Step;
import undercroft.cellar.Batch;
import undercroft.session.Workspace;

/** The day's list at work: every tick and timer goes straight into the cellar, so that a crash loses none. */
public final class DayList {
    private final Workspace workspace;
    private final Clock clock;
    private final PlanForm form;
    private final Checklist checklist;
    private final Consumer<Batch> whenKept;

    DayList(Workspace workspace, Clock clock, PlanForm form, BottlingDay day, Consumer<Batch> whenKept) {
        this.workspace = workspace;
        this.clock = clock;
        this.form = form;
        this.checklist = Checklist.of(day);
        this.whenKept = whenKept;
    }

    public Checklist checklist() {
        return checklist;
    }

    public void tick(Step step, boolean done) {
        keep("undo.plan.ticked", checklist.withDone(step.id(), done));
    }

    /** Starts a step's timer, or starts it anew. */
    public void startTimer(Step step) {
        keep("undo.plan.timer", checklist.withTimer(step.id(), clock.instant()));
    }

    public void stopTimer(Step step) {
        keep("undo.plan.timer", checklist.withoutTimer(step.id()));
    }

    private void keep(String key, Checklist changed) {
        form.setSteps(changed.states());
        Batch made = form.madeProperty().get();
        whenKept.accept(made);
        workspace.change(form.messages().of(key, made.name()), cellar -> cellar.withBatch(made));
    }

    /** What a timer has to run, {@code 9:41}; empty when it does not run. */
    public String left(Step step) {
        return checklist
                .remaining(step.id(), clock.instant())
                .map(DayList::text)
                .orElse("");
    }

    private static String text(Duration left) {
        long seconds = (left.toMillis() + 999) / 1000;
        return String.format(java.util.Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }

    /** True once a timer that was started has run out. */
    public boolean isOver(Step step) {
        return checklist
                .remaining(step.id(), clock.instant())
                .filter(Duration::isZero)
                .isPresent();
    }

    /** A timer that has run out on a step not ticked yet, the first of them. */
    public Optional<Step> waiting() {
        return checklist.steps().stream()
                .filter(step -> isOver(step) && !checklist.isDone(step.id()))
                .findFirst();
    }
}
