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

@Command(name = "calendar", description = "Writes pours, first tastes and best-before dates as iCalendar.")
final class CalendarCommand extends AnswerCommand {
    @Parameters(index = "0", paramLabel = "folder", description = "the cellar folder")
    private Path folder;

    @Option(names = "--at", description = "as of when, like 2026-08-14T15:00:00Z or 2026-08-14 (default: now)")
    private String at;

    @Option(names = "--out", required = true, description = "file to write, or folder with --per-batch")
    private Path out;

    @Option(names = "--per-batch", description = "one file for each batch")
    private boolean perBatch;

    CalendarCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Cellar cellar = CellarStore.read(folder);
        Instant now = console().clock().instant();
        Instant instant = at == null ? now : Typed.instant("--at", at, cellar.zone());
        CellarOutlook outlook =
                Outlooks.of(cellar, CellarStore.temperatures(folder, cellar).celsius(), instant);
        List<Path> files = ShelfCalendar.of(outlook, now).write(out, perBatch);
        return new Answer()
                .put("files", files.stream().map(Path::toString).toList())
                .put("pours", outlook.servings().size())
                .say("Wrote " + (files.size() == 1 ? files.get(0) : files.size() + " calendars into " + out) + " for "
                        + cellar.name() + ".");
    }
}
