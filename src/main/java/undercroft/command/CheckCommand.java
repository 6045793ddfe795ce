package undercroft.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import undercroft.quantity.InvalidInput;
import undercroft.report.Answer;
import undercroft.store.CellarStore;
import undercroft.wording.Messages;

@Command
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "folder", descriptionKey = "folder")
    private Path folder;

    @Option(names = "--json")
    private boolean json;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<InvalidInput> faults = CellarStore.faults(folder);
        Messages english = Messages.english();
        Answer answer = new Answer(console.messages())
                .put("folder", folder.toString())
                .put("faults", faults.stream().map(english::fault).toList());
        if (faults.isEmpty()) {
            answer.say("command.check.nothing", folder);
        }
        faults.forEach(fault -> answer.line(console.messages().fault(fault)));
        console.out().print(json ? answer.json() : answer.text());
        console.out().flush();
        return faults.isEmpty() ? 0 : 2;
    }
}
