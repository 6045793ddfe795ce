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
import undercroft.wording.ShelfWords;

@Command(name = "report")
final class ReportCommand extends AnswerCommand {
    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Option(names = "--at")
    private String at;

    @Option(names = "--out", required = true)
    private Path out;

    ReportCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Cellar cellar = CellarStore.read(folder);
        Instant instant = at == null ? console().clock().instant() : Typed.instant("--at", at, cellar.zone());
        CellarOutlook outlook =
                Outlooks.of(cellar, CellarStore.temperatures(folder, cellar).celsius(), instant);
        ShelfReport.write(out, ShelfWords.of(outlook, console().messages()));
        return reply().put("page", out.resolve("index.html").toString())
                .put("report", out.resolve("report.json").toString())
                .put("batches", outlook.batches().size())
                .say(
                        "command.report.written",
                        out.resolve("index.html"),
                        cellar.name(),
                        outlook.batches().size());
    }
}
