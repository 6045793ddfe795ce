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

@Command(name = "check", description = "Says what is wrong in a cellar folder, and where.")
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "folder", description = "the cellar folder")
    private Path folder;

    @Option(names = "--json", description = "print one JSON object")
    private boolean json;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<String> faults = CellarStore.faults(folder).stream()
                .map(InvalidInput::getMessage)
                .toList();
        Answer answer = new Answer().put("folder", folder.toString()).put("faults", faults);
        if (faults.isEmpty()) {
            answer.say("All well in " + folder + ".");
        } else {
            faults.forEach(answer::say);
        }
        console.out().print(json ? answer.json() : answer.text());
        console.out().flush();
        return faults.isEmpty() ? 0 : 2;
    }
}
