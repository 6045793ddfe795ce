package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.report.Answer;
import undercroft.store.CellarStore;
import undercroft.store.logger.Choices;
import undercroft.store.logger.Finding;
import undercroft.store.logger.ImportMerge;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.Inspection;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.LoggerUnit;
import undercroft.store.logger.Progress;
import undercroft.store.logger.Question.About;
import undercroft.store.logger.Reason;
import undercroft.store.logger.text.TimeFormat;

@Command(name = "import", description = "Takes a logger's file into a place; safe to repeat.")
final class ImportCommand extends AnswerCommand {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ENGLISH);
    private static final Map<String, TimeFormat> ORDERS =
            Map.of("ymd", TimeFormat.YEAR_FIRST, "dmy", TimeFormat.DAY_FIRST, "mdy", TimeFormat.MONTH_FIRST);
    private static final Map<String, LoggerUnit> UNITS =
            Map.of("c", LoggerUnit.CELSIUS, "f", LoggerUnit.FAHRENHEIT, "k", LoggerUnit.KELVIN);

    @Parameters(index = "0", paramLabel = "folder", description = "the cellar folder")
    private Path folder;

    @Parameters(index = "1", paramLabel = "file", description = "the logger's file")
    private Path file;

    @Option(names = "--place", required = true, description = "id of the place it was logged in")
    private String placeId;

    @Option(names = "--column", description = "name of the column to take (default: the likeliest)")
    private String column;

    @Option(names = "--dates", description = "ymd, dmy or mdy, when the file leaves it open")
    private String dates;

    @Option(names = "--unit", description = "c, f or k, when the file leaves it open")
    private String unit;

    ImportCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Cellar cellar = CellarStore.read(folder);
        cellar.place(placeId);
        Inspection found = LoggerFile.inspect(file, cellar.zone());
        Choices choices = choices(found);
        ImportedLog log = LoggerFile.read(file, choices, Progress.NONE);
        try (CellarStore store = CellarStore.open(folder, console().clock(), "undercroft import")) {
            ImportMerge merge = ImportMerge.of(store.temperatures(placeId), log.celsius());
            if (!merge.changesNothing()) {
                store.replaceTemperatures(placeId, merge.series());
            }
            return words(log, merge, choices);
        }
    }

    private Choices choices(Inspection found) {
        Choices choices = Choices.from(found);
        if (column != null) {
            choices = choices.withValueColumn(found.columns().stream()
                    .filter(one -> one.name().equals(column))
                    .findFirst()
                    .orElseThrow(() -> new InvalidInput(
                            "--column",
                            "\"" + column + "\" is not in the file; it has "
                                    + found.columns().stream()
                                            .map(Inspection.Column::name)
                                            .collect(Collectors.joining(", "))))
                    .index());
        }
        if (dates != null) {
            choices = choices.withFormat(chosen("--dates", dates, ORDERS));
        }
        if (unit != null) {
            choices = choices.withUnit(chosen("--unit", unit, UNITS));
        }
        for (undercroft.store.logger.Question question : found.questions()) {
            if (question.about() == About.DATE_ORDER && dates == null) {
                throw new InvalidInput(file.toString(), question.sentence() + " Say --dates ymd, dmy or mdy.");
            }
            if (question.about() == About.UNIT && unit == null) {
                throw new InvalidInput(file.toString(), question.sentence() + " Say --unit c, f or k.");
            }
        }
        return choices;
    }

    private static <T> T chosen(String option, String text, Map<String, T> known) {
        T value = known.get(text.toLowerCase(Locale.ROOT));
        if (value == null) {
            List<String> names = known.keySet().stream().sorted().toList();
            throw new InvalidInput(option, "\"" + text + "\" is not one of " + String.join(", ", names));
        }
        return value;
    }

    private Answer words(ImportedLog log, ImportMerge merge, Choices choices) {
        Answer answer = new Answer()
                .put("place", placeId)
                .put("lines", (double) log.lines())
                .put("kept", log.kept())
                .put("dropped", (double) log.dropped())
                .put("added", merge.added())
                .put("alreadyThere", merge.alreadyThere())
                .put("replaced", merge.replaced());
        answer.say(
                merge.changesNothing()
                        ? "Nothing new in " + file + ": all " + merge.alreadyThere() + " readings were there."
                        : merge.added() + " readings added to " + placeId + ", " + merge.alreadyThere()
                                + " were there, " + merge.replaced() + " had another value and were replaced.");
        if (!log.celsius().isEmpty()) {
            ZoneId zone = choices.zone();
            answer.say("Read as " + choices.format().words() + " and "
                    + choices.unit().symbol() + ": from "
                    + DAY.format(
                            Instant.ofEpochSecond(log.celsius().firstTime()).atZone(zone)) + " to "
                    + DAY.format(Instant.ofEpochSecond(log.celsius().lastTime()).atZone(zone)) + ".");
        }
        Arrays.stream(Reason.values()).forEach(reason -> {
            Finding finding = log.found(reason);
            if (finding.count() > 0) {
                answer.say(finding.count() + (reason.drops() ? " dropped: " : " repaired: ") + reason.words()
                        + " (line " + finding.lines().get(0) + (finding.count() > 1 ? " first" : "") + ")");
            }
        });
        return answer;
    }
}
