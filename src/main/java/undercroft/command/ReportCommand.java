package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.report.Answer;
import undercroft.report.ShelfReport;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.store.LoggedTemperatures;
import undercroft.wording.ProblemWords;
import undercroft.wording.ShelfWords;

@Command
final class ReportCommand extends AnswerCommand {
    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Option(names = "--at")
    private String at;

    @Option(names = "--out", required = true)
    private Path out;

    @Option(names = "--force")
    private boolean force;

    ReportCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Cellar cellar = CellarStore.read(folder);
        Instant now = console().clock().instant();
        Instant instant = at == null ? now : Typed.instant("--at", at, cellar.zone(), now);
        LoggedTemperatures logged = CellarStore.temperatures(folder, cellar);
        ShelfMemory memory = new ShelfMemory();
        CellarOutlook outlook = Outlooks.of(cellar, logged.celsius(), instant, List.of(), memory)
                .telling(logged.faults());
        Map<String, EvidenceCourse> courses = Outlooks.courses(cellar, logged.celsius(), outlook, memory);
        Exporting.replacing(
                force,
                replacing -> Export.ofTexts()
                        .folder(
                                out,
                                ShelfReport.of(ShelfWords.of(outlook, console().messages()), courses),
                                replacing));
        Answer answer = reply().put("page", out.resolve(ShelfReport.PAGE).toString())
                .put("report", out.resolve(ShelfReport.DATA).toString())
                .put("batches", outlook.batches().size())
                .put("problems", outlook.problems().size())
                .say(
                        "command.report.written",
                        out.resolve(ShelfReport.PAGE),
                        cellar.name(),
                        outlook.batches().size());
        ProblemWords said = new ProblemWords(ShelfWords.of(outlook, console().messages()));
        outlook.problems()
                .forEach(problem -> answer.say("command.report.problem", said.where(problem), said.what(problem)));
        return answer;
    }
}
