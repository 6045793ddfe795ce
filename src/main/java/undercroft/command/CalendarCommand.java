package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.report.Answer;
import undercroft.report.ShelfCalendar;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.store.LoggedTemperatures;
import undercroft.wording.ShelfWords;

@Command
final class CalendarCommand extends AnswerCommand {
    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Option(names = "--at")
    private String at;

    @Option(names = "--out", required = true)
    private Path out;

    @Option(names = "--per-batch")
    private boolean perBatch;

    @Option(names = "--force")
    private boolean force;

    CalendarCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Cellar cellar = CellarStore.read(folder);
        Instant now = console().clock().instant();
        Instant instant = at == null ? now : Typed.instant("--at", at, cellar.zone(), now);
        LoggedTemperatures logged = CellarStore.temperatures(folder, cellar);
        CellarOutlook outlook = Outlooks.of(cellar, logged.celsius(), instant).telling(logged.faults());
        ShelfCalendar calendar =
                ShelfCalendar.of(ShelfWords.of(outlook, console().messages()), now);
        List<Path> files = Exporting.replacing(
                force,
                replacing -> perBatch
                        ? Export.ofTexts().texts(out, calendar.perBatch(), replacing)
                        : List.of(Export.ofTexts().file(out, calendar.text(), replacing)));
        Answer answer = reply().put("files", files.stream().map(Path::toString).toList())
                .put("servings", outlook.servings().size());
        return files.size() == 1
                ? answer.say("command.calendar.one", files.get(0), cellar.name())
                : answer.say("command.calendar.each", files.size(), out, cellar.name());
    }
}
