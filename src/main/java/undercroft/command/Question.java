package undercroft.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import undercroft.report.Answer;

/** A command that asks the calculations one thing and prints the answer. */
abstract class Question implements Callable<Integer> {
    private final Session session;

    @Option(names = "--json", description = "print one JSON object, units in its keys")
    private boolean json;

    Question(Session session) {
        this.session = session;
    }

    abstract Answer answer();

    Session session() {
        return session;
    }

    @Override
    public Integer call() {
        Answer answer = answer();
        session.out().print(json ? answer.json() : answer.text());
        session.out().flush();
        return 0;
    }
}
