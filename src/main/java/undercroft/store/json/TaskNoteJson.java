package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;
import undercroft.cellar.TaskNote;

/** What was said to a line of To do, as JSON; without {@code until} it holds for good. */
final class TaskNoteJson {
    private TaskNoteJson() {}

    static TaskNote read(JsonFields fields) {
        String task = fields.text("task");
        TaskNote.What what = fields.listed(TaskNote.What.class, "what");
        Optional<Instant> until = fields.optionalInstant("until");
        return fields.made(() -> new TaskNote(task, what, until));
    }

    static ObjectNode write(TaskNote note) {
        JsonWriter json = new JsonWriter().put("task", note.taskKey()).put("what", note.what());
        note.until().ifPresent(until -> json.put("until", until.toString()));
        return json.node();
    }
}
