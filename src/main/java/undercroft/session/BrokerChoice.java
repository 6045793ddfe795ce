package undercroft.session;

import java.util.Optional;
import java.util.function.Consumer;
import undercroft.quantity.InvalidInput;
import undercroft.store.Broker;

/** The one broker of live sensors that the user's settings name. For the window's thread; nothing waits for a disk. */
public interface BrokerChoice {
    /** Whether one can be named here: the demo and a cellar that is only looked at listen to nothing. */
    boolean mayListen();

    /** Reads which one is named; what is wrong with its file goes to the second answer. */
    void broker(Consumer<Optional<Broker>> whenRead, Consumer<InvalidInput> whenUnreadable);

    /** Names another one, or none, and turns to it. */
    void turnTo(Optional<Broker> broker);
}
