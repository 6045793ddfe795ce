package undercroft.bottling;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.StepState;

/**
 * The day's steps in working order with what is ticked and which timers run. Immutable: each tick gives a new list, whose
 * {@link #states} go into the plan and so survive a crash.
 */
public final class Checklist {
    private final List<Step> steps;
    private final List<StepState> states;

    private Checklist(List<Step> steps, List<StepState> states) {
        this.steps = steps;
        this.states = List.copyOf(states);
    }

    /** The list of a day, with the ticks and timers its plan has kept. */
    public static Checklist of(BottlingDay day) {
        return new Checklist(Steps.of(day), day.plan().filling().steps());
    }

    public List<Step> steps() {
        return steps;
    }

    /** What to keep: ticks and timers, also of steps that the present plan does without. */
    public List<StepState> states() {
        return states;
    }

    public boolean isDone(String stepId) {
        return state(stepId).map(StepState::done).orElse(false);
    }

    /** The first step not ticked yet; empty when all are. */
    public Optional<Step> next() {
        return steps.stream().filter(step -> !isDone(step.id())).findFirst();
    }

    /** Steps ticked. */
    public int done() {
        return (int) steps.stream().filter(step -> isDone(step.id())).count();
    }

    public Checklist withDone(String stepId, boolean done) {
        requireStep(stepId);
        return with(new StepState(stepId, done, state(stepId).flatMap(StepState::timerFrom)));
    }

    /** The step's timer started, or started anew. */
    public Checklist withTimer(String stepId, Instant from) {
        requireStep(stepId);
        return with(new StepState(stepId, isDone(stepId), Optional.of(from)));
    }

    public Checklist withoutTimer(String stepId) {
        requireStep(stepId);
        return with(new StepState(stepId, isDone(stepId), Optional.empty()));
    }

    /** What the step's timer still has to run, zero once it is over; empty when it was not started or has none. */
    public Optional<Duration> remaining(String stepId, Instant now) {
        Optional<Duration> whole = requireStep(stepId).timer();
        Optional<Instant> from = state(stepId).flatMap(StepState::timerFrom);
        if (whole.isEmpty() || from.isEmpty()) {
            return Optional.empty();
        }
        Duration left = Duration.between(now, from.get().plus(whole.get()));
        return Optional.of(left.isNegative() ? Duration.ZERO : left);
    }

    private Step requireStep(String stepId) {
        return steps.stream()
                .filter(step -> step.id().equals(stepId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no step " + stepId));
    }

    private Optional<StepState> state(String stepId) {
        return states.stream().filter(state -> state.id().equals(stepId)).findFirst();
    }

    private Checklist with(StepState changed) {
        List<StepState> all = new ArrayList<>(states);
        all.removeIf(state -> state.id().equals(changed.id()));
        all.add(changed);
        return new Checklist(steps, all);
    }
}
