package undercroft.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.report.Answer;
import undercroft.report.experiment.ExperimentCellar;
import undercroft.report.experiment.ExperimentFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.wording.ExperimentWords;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

@Command
final class CheckExperimentCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "file", descriptionKey = "file")
    private Path file;

    @Option(names = "--json")
    private boolean json;

    CheckExperimentCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        byte[] bytes = new WholeFile(Disk.REAL).bytes(file, file.toString(), WholeFile.MOST_SMALL_BYTES);
        ExperimentFile experiment = ExperimentFile.read(file.toString(), new String(bytes, StandardCharsets.UTF_8));
        List<InvalidInput> faults = experiment.faults();
        Messages english = Messages.english();
        Answer answer = new Answer(console.messages())
                .put("file", file.toString())
                .put("faults", faults.stream().map(english::fault).toList());
        faults.forEach(fault -> answer.line(console.messages().fault(fault)));
        if (faults.isEmpty()) {
            answer.say("command.check.nothing", file);
            QuantityFormat words = QuantityFormat.of(console.messages(), UnitSystem.METRIC, console.zone());
            Experiments.said(answer, ExperimentCellar.experiment(experiment), new ExperimentWords(words))
                    .estimate();
        }
        console.out().print(json ? answer.json() : answer.text());
        console.out().flush();
        return faults.isEmpty() ? 0 : 2;
    }
}
