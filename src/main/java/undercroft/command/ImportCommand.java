package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.report.Answer;
import undercroft.session.FolderRepository;
import undercroft.session.IncomingFiles;
import undercroft.session.LogImport;
import undercroft.store.CellarStore;
import undercroft.store.Incoming;
import undercroft.store.logger.Choices;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.Inspection;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.LoggerUnit;
import undercroft.store.logger.Progress;
import undercroft.store.logger.Question.About;
import undercroft.store.logger.text.TimeFormat;
import undercroft.wording.QuantityFormat;

@Command
final class ImportCommand extends AnswerCommand {
    static final Map<String, TimeFormat> ORDERS =
            Map.of("ymd", TimeFormat.YEAR_FIRST, "dmy", TimeFormat.DAY_FIRST, "mdy", TimeFormat.MONTH_FIRST);
    private static final Map<String, LoggerUnit> UNITS =
            Map.of("c", LoggerUnit.CELSIUS, "f", LoggerUnit.FAHRENHEIT, "k", LoggerUnit.KELVIN);

    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Parameters(index = "1", paramLabel = "file", descriptionKey = "file")
    private Path file;

    @Option(names = "--place")
    private String placeId;

    @Option(names = "--gauge")
    private String gauge;

    @Option(names = "--column")
    private String column;

    @Option(names = "--dates")
    private String dates;

    @Option(names = "--unit")
    private String unit;

    ImportCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Cellar cellar = CellarStore.read(folder);
        if (gauge != null) {
            return new GaugeImport(console(), folder, file, gauge, column, dates, unit).into(cellar, reply());
        }
        if (placeId == null) {
            throw new InvalidInput("", "command.fault.missing", "--place");
        }
        cellar.place(placeId);
        Inspection found = LoggerFile.inspect(file, cellar.zone());
        Choices choices = choices(found);
        ImportedLog log = LoggerFile.read(file, choices, Progress.NONE);
        try (CellarStore store = CellarStore.open(folder, console().clock(), "undercroft import")) {
            IncomingFiles.takeInAlone(store);
            LogImport done = LogImport.of(store.cellar(), placeId, store.temperatures(placeId), log);
            done.into(new FolderRepository(store));
            return words(done, choices);
        } catch (InvalidInput fault) {
            if (!CellarStore.isOpenElsewhere(fault)) {
                throw fault;
            }
            Path left = Incoming.of(folder)
                    .drop(placeId, log.celsius(), console().clock().instant());
            return reply().put("place", placeId)
                    .put("kept", log.kept())
                    .put("waiting", left.toString())
                    .say("incoming.left", left);
        }
    }

    private Choices choices(Inspection found) {
        Choices choices = Choices.from(found);
        if (column != null) {
            choices = choices.withValueColumn(found.columns().stream()
                    .filter(one -> one.name().equals(column))
                    .findFirst()
                    .orElseThrow(() -> new InvalidInput("--column", "command.fault.no-column", column, columns(found)))
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
                throw new InvalidInput(file.toString(), "command.fault.say-dates", question.asked());
            }
            if (question.about() == About.COLUMN && column == null) {
                throw new InvalidInput(file.toString(), "command.fault.say-column", question.asked(), columns(found));
            }
            if (question.about() == About.UNIT && unit == null && column == null) {
                throw new InvalidInput(file.toString(), "command.fault.say-unit", question.asked());
            }
        }
        return choices;
    }

    static String columns(Inspection found) {
        return found.columns().stream().map(Inspection.Column::name).collect(Collectors.joining(", "));
    }

    static <T> T chosen(String option, String text, Map<String, T> known) {
        T value = known.get(text.toLowerCase(Locale.ROOT));
        if (value == null) {
            List<String> names = known.keySet().stream().sorted().toList();
            throw new InvalidInput(option, "command.fault.not-one-of", text, String.join(", ", names));
        }
        return value;
    }

    private Answer words(LogImport done, Choices choices) {
        ImportedLog log = done.log();
        QuantityFormat words = QuantityFormat.of(console().messages(), UnitSystem.METRIC, choices.zone());
        Answer answer = reply().put("place", placeId)
                .put("lines", (double) log.lines())
                .put("kept", log.kept())
                .put("dropped", (double) log.dropped())
                .put("added", done.merge().added())
                .put("alreadyThere", done.merge().alreadyThere())
                .put("replaced", done.merge().replaced())
                .put("becameSource", done.becomesSource());
        if (!log.celsius().isEmpty()) {
            answer.say(
                    "command.import.read",
                    choices.format(),
                    choices.unit(),
                    words.dayAndTime(Instant.ofEpochSecond(log.celsius().firstTime())),
                    words.dayAndTime(Instant.ofEpochSecond(log.celsius().lastTime())));
        }
        done.lines(words).forEach(answer::line);
        return answer;
    }
}
