package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.report.Answer;
import undercroft.report.ShelfReport;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.wording.ShelfWords;

@Command(name = "report")
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
        Instant instant = at == null ? console().clock().instant() : Typed.instant("--at", at, cellar.zone());
        CellarOutlook outlook =
                Outlooks.of(cellar, CellarStore.temperatures(folder, cellar).celsius(), instant);
        Exporting.replacing(
                force,
                replacing -> Export.ofTexts()
                        .folder(
                                out,
                                ShelfReport.of(ShelfWords.of(outlook, console().messages())),
                                replacing));
        return reply().put("page", out.resolve(ShelfReport.PAGE).toString())
                .put("report", out.resolve(ShelfReport.DATA).toString())
                .put("batches", outlook.batches().size())
                .say(
                        "command.report.written",
                        out.resolve(ShelfReport.PAGE),
                        cellar.name(),
                        outlook.batches().size());
    }
}
