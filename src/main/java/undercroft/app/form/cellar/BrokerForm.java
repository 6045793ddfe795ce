package undercroft.app.form.cellar;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import undercroft.app.form.BooleanField;
import undercroft.app.form.Field;
import undercroft.app.form.Form;
import undercroft.app.form.WordsField;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.store.Broker;
import undercroft.wording.Messages;

/** Where live sensors are heard. It is the user's and not the cellar's, so saving it changes no cellar. */
public final class BrokerForm extends Form {
    private final WordsField address;
    private final BooleanField tls;
    private final WordsField certificates;
    private final WordsField user;
    private final WordsField password;

    public BrokerForm(Messages messages, Cellar cellar, Optional<Broker> before) {
        super(messages, cellar);
        address = add(words("address", before.map(Broker::address).orElse("")), "host");
        address.hintProperty().set(messages().of("form.broker.address-hint"));
        tls = add(new BooleanField(
                messages(),
                "broker-tls",
                messages().of("form.broker.tls"),
                before.map(Broker::tls).orElse(true)));
        certificates = add(
                words(
                        "certificates",
                        before.flatMap(Broker::certificates).map(Path::toString).orElse("")),
                "certificates");
        certificates.hintProperty().set(messages().of("form.broker.certificates-hint"));
        user = add(words("user", before.flatMap(Broker::user).orElse("")), "user");
        password =
                add(words("password", before.map(Broker::password).orElse("")).hidden(), "password");
        password.hintProperty().set(messages().of("form.broker.password-hint"));
        certificates.askWhen(tls.tickedProperty());
        begin();
    }

    private WordsField words(String key, String initial) {
        return new WordsField(messages(), "broker-" + key, messages().of("form.broker." + key), initial);
    }

    public List<Field<?>> fields() {
        return List.of(address, tls, certificates, user, password);
    }

    /** As told; empty where no address is, so that nothing is listened to. */
    public Optional<Broker> broker() {
        if (address.value().isBlank()) {
            return Optional.empty();
        }
        return Optional.of(Broker.at(
                address.value(),
                tls.value(),
                tls.value() ? certificateFile() : Optional.empty(),
                told(user),
                user.value().isBlank() ? "" : password.value()));
    }

    private Optional<Path> certificateFile() {
        try {
            return told(certificates).map(Path::of);
        } catch (InvalidPathException noPath) {
            throw new InvalidInput("certificates", "listen.fault.certificates");
        }
    }

    private static Optional<String> told(WordsField field) {
        return Optional.of(field.value().strip()).filter(text -> !text.isEmpty());
    }

    @Override
    public String what() {
        return messages().of("form.broker.title");
    }

    @Override
    public Cellar applyTo(Cellar current) {
        broker();
        return current;
    }
}
