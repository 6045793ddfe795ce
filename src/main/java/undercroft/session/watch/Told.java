package undercroft.session.watch;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    /** All that stands of one kind: what is new is told, and what is gone is over. */
    void standing(String kind, List<InvalidInput> faults) {
        Set<String> now = new HashSet<>();
        for (InvalidInput fault : faults) {
            String what = kind + "/" + fault.where() + "/" + fault.key()
                    + (fault.key().equals(InvalidInput.LINE) ? fault.arguments() : "");
            now.add(what);
            if (!standing.containsKey(what)) {
                fault(what, fault);
            }
        }
        for (String what : Set.copyOf(standing.keySet())) {
            if (what.startsWith(kind + "/") && !now.contains(what)) {
                over(what);
            }
        }
    }

    /** Something that happened and does not stand. */
    void once(InvalidInput fault) {
        faults.accept(messages.fault(fault));
    }
}
