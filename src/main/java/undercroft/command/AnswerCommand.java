package undercroft.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import undercroft.quantity.UnitSystem;
import undercroft.report.Answer;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** A command that asks the calculations one thing and prints the answer. */
abstract class AnswerCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--json")
    private boolean json;

    AnswerCommand(Console console) {
        this.console = console;
    }

    abstract Answer answer();

    Console console() {
        return console;
    }

    /** Quantities and dates in the language of the console; commands answer in metric units. */
    QuantityFormat words() {
        return QuantityFormat.of(console.messages(), UnitSystem.METRIC, console.zone());
    }

    /** The same in the language of JSON. */
    QuantityFormat english() {
        return QuantityFormat.of(Messages.english(), UnitSystem.METRIC, console.zone());
    }

    /** An answer without a word yet. */
    Answer reply() {
        return new Answer(console.messages());
    }

    @Override
    public Integer call() {
        Answer answer = answer();
        console.out().print(json ? answer.json() : answer.text());
        console.out().flush();
        return 0;
    }
}
