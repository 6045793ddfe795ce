package undercroft.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import undercroft.report.Answer;

/** A command that asks the calculations one thing and prints the answer. */
abstract class AnswerCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--json", description = "print one JSON object, units in its keys")
    private boolean json;

    AnswerCommand(Console console) {
        this.console = console;
    }

    abstract Answer answer();

    Console console() {
        return console;
    }

    @Override
    public Integer call() {
        Answer answer = answer();
        console.out().print(json ? answer.json() : answer.text());
        console.out().flush();
        return 0;
    }
}
