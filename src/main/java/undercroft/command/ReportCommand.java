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

@Command(name = "report", description = "Writes the shelf as report.json, index.html and series.")
final class ReportCommand extends AnswerCommand {
    @Parameters(index = "0", paramLabel = "folder", description = "the cellar folder")
    private Path folder;

    @Option(names = "--at", description = "as of when, like 2026-08-14T15:00:00Z or 2026-08-14 (default: now)")
    private String at;

    @Option(names = "--out", required = true, description = "folder to write into")
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
        ShelfReport.write(out, outlook);
        return new Answer()
                .put("page", out.resolve("index.html").toString())
                .put("report", out.resolve("report.json").toString())
                .put("batches", outlook.batches().size())
                .say("Wrote " + out.resolve("index.html") + " and report.json for " + cellar.name() + ", "
                        + (outlook.batches().size() == 1
                                ? "1 batch."
                                : outlook.batches().size() + " batches."));
    }
}
