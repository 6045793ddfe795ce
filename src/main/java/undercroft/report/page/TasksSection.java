package undercroft.report.page;

import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.task.Task;
import undercroft.wording.ShelfWords;
import undercroft.wording.TaskWords;

/** What the shelf wants from a person, most urgent first. */
final class TasksSection {
    private TasksSection() {}

    static void write(Markup page, CellarOutlook outlook, ShelfWords words) {
        page.open("section", "aria-labelledby", "tasks").element("h2", words.of("report.tasks.title"), "id", "tasks");
        if (outlook.tasks().isEmpty()) {
            page.element("p", words.of("report.tasks.none"), "class", "quiet");
        } else {
            page.open("ol", "class", "tasks");
            TaskWords said = new TaskWords(words);
            for (Task task : outlook.tasks()) {
                AlertMark.write(page.open("li", "class", AlertMark.cssName(task.alert())), task.alert(), words);
                page.open("div").open("p", "class", "what");
                page.open("a", "href", "#batch-" + task.batchId())
                        .text(said.what(task))
                        .close("a")
                        .close("p");
                page.open("p", "class", "faint")
                        .text(words.of("report.tasks.why", words.when(task.when()), said.why(task)))
                        .close("p");
                page.close("div").close("li");
            }
            page.close("ol");
        }
        page.close("section");
    }
}
