package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.PressureUnit;
import undercroft.listen.GaugeBottle;
import undercroft.quantity.InvalidInput;
import undercroft.report.Answer;
import undercroft.series.TimeSeries;
import undercroft.session.IncomingFiles;
import undercroft.session.LiveGauges;
import undercroft.store.CellarStore;
import undercroft.store.Incoming;
import undercroft.store.logger.Choices;
import undercroft.store.logger.Inspection;
import undercroft.store.logger.LoggerFile;
import undercroft.store.logger.LoggerUnit;
import undercroft.store.logger.Progress;

/** A gauge's own file: what it logged becomes readings of its lot, as what a live gauge sends does. */
record GaugeImport(Console console, Path folder, Path file, String bottle, String column, String dates, String unit) {
    private static final Map<String, PressureUnit> UNITS = Map.of("bar", PressureUnit.BAR, "psi", PressureUnit.PSI);

    Answer into(Cellar cellar, Answer answer) {
        String[] parts = bottle.split("/", 2);
        if (parts.length != 2) {
            throw new InvalidInput("--gauge", "command.fault.gauge", bottle);
        }
        Lot lot = cellar.batch(parts[0]).lot(parts[1]);
        FittedGauge fitted = lot.gauge().orElseThrow(() -> new InvalidInput(bottle, "experiment.fault.none"));
        PressureUnit pressure = unit == null ? PressureUnit.BAR : ImportCommand.chosen("--unit", unit, UNITS);
        TimeSeries values = LoggerFile.read(file, choices(LoggerFile.inspect(file, cellar.zone())), Progress.NONE)
                .celsius();
        Instant now = console.clock().instant();
        int laid = new LiveGauges()
                .drop(
                        Incoming.of(folder),
                        cellar,
                        Map.of(new GaugeBottle(parts[0], parts[1]), bars(values, pressure, fitted, now)),
                        now);
        return answer.put("batch", parts[0])
                .put("lot", parts[1])
                .put("values", values.size())
                .put("readings", laid)
                .put("waiting", isWaiting())
                .say("command.gauge.read", values.size(), laid);
    }

    /** What was logged while the gauge sat on its bottle. */
    private static TimeSeries bars(TimeSeries values, PressureUnit unit, FittedGauge gauge, Instant now) {
        TimeSeries.Builder bars = new TimeSeries.Builder();
        for (int i = 0; i < values.size(); i++) {
            Instant at = Instant.ofEpochSecond(values.timeAt(i));
            double bar = unit.bar(values.valueAt(i));
            if (gauge.isReadAt(at) && !at.isAfter(now) && bar >= -0.5 && bar <= 16) {
                bars.add(values.timeAt(i), bar);
            }
        }
        return bars.build();
    }

    /** The readings lie in {@code incoming}; who has the cellar open takes them in, or nobody has and it is done here. */
    private boolean isWaiting() {
        try (CellarStore store = CellarStore.open(folder, console.clock(), "undercroft import")) {
            IncomingFiles.takeInAlone(store);
            return false;
        } catch (InvalidInput fault) {
            if (!CellarStore.isOpenElsewhere(fault)) {
                throw fault;
            }
            return true;
        }
    }

    private Choices choices(Inspection found) {
        if (column == null && found.columns().size() > 1) {
            throw new InvalidInput(
                    file.toString(),
                    "command.fault.say-column",
                    ImportCommand.columns(found),
                    ImportCommand.columns(found));
        }
        Choices choices = Choices.from(found).withUnit(LoggerUnit.CELSIUS);
        if (column != null) {
            choices = choices.withValueColumn(found.columns().stream()
                    .filter(one -> one.name().equals(column))
                    .findFirst()
                    .orElseThrow(() -> new InvalidInput(
                            "--column", "command.fault.no-column", column, ImportCommand.columns(found)))
                    .index());
        }
        return dates == null
                ? choices
                : choices.withFormat(ImportCommand.chosen("--dates", dates, ImportCommand.ORDERS));
    }
}
