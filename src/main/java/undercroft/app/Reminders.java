package undercroft.app;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.task.Task;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;
import undercroft.wording.TaskWords;

/** What is worth a quiet notice while the window is open, each thing once. */
public final class Reminders {
    private static final Duration SOON = Duration.ofHours(1);

    private final Set<String> told = new HashSet<>();
    private boolean begun;

    /** Two lines of a notice. */
    public record Reminder(String title, String text, String batchId) {}

    /**
     * What is new since the last call: tasks that have come to "act now", and bottles that go into the cold within the
     * hour. Tasks there at the first call are in plain sight already and are not told.
     */
    public List<Reminder> fresh(CellarOutlook outlook, Messages messages) {
        List<Reminder> fresh = new ArrayList<>();
        TaskWords words = new TaskWords(ShelfWords.of(outlook, messages));
        for (Task task : outlook.tasks()) {
            if (task.alert() == Alert.ACT && told.add(task.key()) && begun) {
                fresh.add(new Reminder(words.what(task), words.why(task), task.batchId()));
            }
        }
        for (ServingPlan plan : outlook.servings()) {
            boolean soon = plan.chillFrom()
                    .filter(from -> !from.isBefore(outlook.at())
                            && !from.isAfter(outlook.at().plus(SOON)))
                    .isPresent();
            if (soon && told.add("chill soon/" + plan.serving().id())) {
                fresh.add(chill(plan, ShelfWords.of(outlook, messages)));
            }
        }
        begun = true;
        return fresh;
    }

    private static Reminder chill(ServingPlan plan, ShelfWords words) {
        String name = words.outlook().cellar().batch(plan.serving().batchId()).name();
        return new Reminder(
                words.of("todo.remind.chill", plan.serving().bottles(), name),
                words.of(
                        "todo.remind.why",
                        words.when(plan.chillFrom().orElseThrow()),
                        words.when(plan.serving().at())),
                plan.serving().batchId());
    }
}
