package undercroft.report.page;

import java.util.List;
import java.util.Optional;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.task.Task;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Headlines;
import undercroft.wording.LearnedWords;
import undercroft.wording.ShelfWords;
import undercroft.wording.TaskWords;
import undercroft.wording.Why;
import undercroft.wording.Whys;

/**
 * One batch: headline, cautions, key figures, pictures, the figures of its lots, and where they come from. Of one drunk up
 * the figures stay, and its course in {@code series}; no picture of it, or years of batches would weigh the page down.
 */
final class BatchSection {
    private final Markup page;
    private final CellarOutlook outlook;
    private final BatchOutlook batch;
    private final Optional<EvidenceCourse> course;
    private final ShelfWords words;

    BatchSection(
            Markup page, CellarOutlook outlook, BatchOutlook batch, Optional<EvidenceCourse> course, ShelfWords words) {
        this.course = course;
        this.page = page;
        this.outlook = outlook;
        this.batch = batch;
        this.words = words;
    }

    void write() {
        String id = "batch-" + batch.id();
        page.open("article", "class", "batch", "id", id, "aria-labelledby", id + "-name");
        page.open("h3", "id", id + "-name").name(batch.batch().name()).close("h3");
        AlertMark.write(page.open("p", "class", "row"), batch.alert(), words);
        page.element("span", words.nameOf(batch.stage()), "class", "stage").close("p");
        page.element("p", new Headlines(words).of(batch), "class", "headline");
        Cautions.write(page, batch, words);
        tasks();
        evidence();
        batch.learned()
                .ifPresent(learned -> page.element(
                        "p", words.format().messages().sentence(new LearnedWords(words).sentence(learned))));
        if (batch.isCapped()) {
            KeyFigures.write(page, batch, words);
            if (batch.bottlesLeft() > 0) {
                pictures();
            }
            LotFigures.write(page, outlook, batch, words);
        }
        notes();
        if (!batch.isCapped() || batch.bottlesLeft() > 0) {
            whys();
        }
        page.close("article");
    }

    private void tasks() {
        List<Task> tasks = outlook.tasksOf(batch);
        if (tasks.isEmpty()) {
            return;
        }
        page.open("ul", "class", "wants");
        TaskWords said = new TaskWords(words);
        for (Task task : tasks) {
            page.open("li").element("strong", said.what(task));
            page.text(words.of("report.batch.task", words.when(task.when()), said.why(task)))
                    .close("li");
        }
        page.close("ul");
    }

    private void evidence() {
        EvidenceWords said = new EvidenceWords(words);
        for (EvidenceWords.Question question : said.questions(batch)) {
            page.open("p").element("strong", question.asked());
            page.text(" " + question.answered().map(answer -> answer + " ").orElse("")
                            + words.of("evidence.burst.note"))
                    .close("p");
        }
        List<EvidenceWords.Line> lines = said.lines(batch);
        if (lines.isEmpty()) {
            return;
        }
        page.open("table", "class", "evidence").element("caption", words.of("evidence.title"));
        page.open("thead").open("tr").element("td", "");
        page.element("th", words.of("evidence.before"), "scope", "col");
        page.element("th", words.of("evidence.now"), "scope", "col").close("tr").close("thead");
        page.open("tbody");
        for (EvidenceWords.Line line : lines) {
            page.open("tr").element("th", line.what(), "scope", "row");
            page.element("td", line.before()).element("td", line.now()).close("tr");
        }
        page.close("tbody").close("table");
        page.element("p", words.of("evidence.means"), "class", "faint");
        course.ifPresent(each -> EvidenceSection.write(page, each, words));
    }

    private void pictures() {
        LotOutlook main = batch.mainLot();
        LotPicture.write(page, outlook, batch, main, words);
        for (LotOutlook lot : batch.lots()) {
            if (!lot.lot().id().equals(main.lot().id()) && lot.left() > 0) {
                LotPicture.write(page, outlook, batch, lot, words);
            }
        }
    }

    private void notes() {
        if (!batch.batch().notes().isBlank()) {
            page.element("h4", words.of("report.batch.notes"));
            page.element("p", batch.batch().notes().strip(), "class", "notes", "dir", "auto");
        }
    }

    private void whys() {
        List<Why> whys = new Whys(words).of(batch);
        if (whys.isEmpty()) {
            return;
        }
        page.open("div", "class", "whys").element("h4", words.of("report.batch.whys"));
        whys.forEach(this::why);
        page.close("div");
    }

    private void why(Why why) {
        page.open("details").element("summary", why.title());
        page.element("p", words.format().messages().sentence(why.how()));
        page.open("dl", "class", "inputs");
        for (Why.Input input : why.inputs()) {
            page.open("div")
                    .element("dt", input.name())
                    .element("dd", input.value())
                    .close("div");
        }
        page.close("dl");
        List<Why.Assumption> assumptions = why.assumptions();
        if (!assumptions.isEmpty()) {
            page.open("ul");
            for (Why.Assumption assumption : assumptions) {
                page.open("li").text(words.format().messages().capital(assumption.text()) + " ");
                page.element("em", words.of("report.batch.grade", assumption.grade()))
                        .close("li");
            }
            page.close("ul");
        }
        page.element("p", words.of("report.batch.source", why.source()), "class", "faint")
                .close("details");
    }
}
