package undercroft.view;

import java.util.Optional;
import java.util.function.Consumer;
import undercroft.quantity.InvalidInput;
import undercroft.session.BrokerChoice;
import undercroft.store.Broker;

/** Settings that name a broker for as long as a test runs, and listen to nothing. */
public final class NoBroker implements BrokerChoice {
    private Optional<Broker> named = Optional.empty();

    @Override
    public boolean mayListen() {
        return true;
    }

    @Override
    public void broker(Consumer<Optional<Broker>> whenRead, Consumer<InvalidInput> whenUnreadable) {
        whenRead.accept(named);
    }

    @Override
    public void turnTo(Optional<Broker> broker) {
        named = broker;
    }

    public Optional<Broker> named() {
        return named;
    }
}
