package undercroft.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.cellar.Cellar;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.GaugeExperiment;
import undercroft.report.Answer;
import undercroft.report.experiment.ExperimentCsv;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.wording.ExperimentWords;

@Command
final class ExportExperimentCommand extends AnswerCommand {
    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Parameters(index = "1", paramLabel = "batch", descriptionKey = "batch")
    private String batchId;

    @Option(names = "--lot")
    private String lotId;

    @Option(names = "--out", required = true)
    private Path out;

    @Option(names = "--at")
    private String at;

    @Option(names = "--force")
    private boolean force;

    ExportExperimentCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Cellar cellar = CellarStore.read(folder);
        Instant now = console().clock().instant();
        Instant instant = at == null ? now : Typed.instant("--at", at, cellar.zone(), now);
        GaugeExperiment experiment = Outlooks.experiment(
                cellar,
                CellarStore.temperatures(folder, cellar).celsius(),
                instant,
                batchId,
                Optional.ofNullable(lotId));
        Path file = Exporting.replacing(
                force, replacing -> Export.ofTexts().file(out, ExperimentCsv.of(cellar, experiment), replacing));
        Answer answer = reply().put("file", file.toString());
        return Experiments.said(answer, experiment, new ExperimentWords(words()))
                .say("command.experiment.written", file)
                .estimate();
    }
}
