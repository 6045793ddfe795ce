package undercroft.session.watch;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** Tells each fault once, and once that it is over. */
final class Told {
    private final Messages messages;
    private final Consumer<String> faults;
    private final Map<String, String> standing = new HashMap<>();

    Told(Messages messages, Consumer<String> faults) {
        this.messages = messages;
        this.faults = faults;
    }

    /** Does something; what goes wrong is told, and it is tried again the next time. */
    void attempt(String what, Runnable work) {
        try {
            work.run();
            over(what);
        } catch (InvalidInput fault) {
            fault(what, fault);
        }
    }

    void fault(String what, InvalidInput fault) {
        String sentence = messages.fault(fault);
        if (!sentence.equals(standing.put(what, sentence))) {
            faults.accept(sentence);
        }
    }

    void over(String what) {
        String sentence = standing.remove(what);
        if (sentence != null) {
            faults.accept(messages.of("watch.over", sentence));
        }
    }

    /** Something that happened and does not stand. */
    void once(InvalidInput fault) {
        faults.accept(messages.fault(fault));
    }
}
