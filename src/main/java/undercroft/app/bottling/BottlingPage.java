package undercroft.app.bottling;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import undercroft.wording.Messages;

/** The pages of a bottling day, in working order. */
public enum BottlingPage {
    BEER("beer"),
    BOTTLES("bottles"),
    CARBONATION("carbonation"),
    SUGAR("sugar"),
    GO_OR_WAIT("verdict"),
    CLEAN("clean"),
    THE_DAY("day"),
    CAP("cap");

    private final String id;

    BottlingPage(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    public String title(Messages messages) {
        return messages.of("bottling.screen." + id);
    }

    /** Its place in working order, from 1. */
    public int number() {
        return List.of(values()).indexOf(this) + 1;
    }

    public Optional<BottlingPage> next() {
        return at(number() + 1);
    }

    public Optional<BottlingPage> previous() {
        return at(number() - 1);
    }

    private static Optional<BottlingPage> at(int number) {
        return Stream.of(values()).filter(screen -> screen.number() == number).findFirst();
    }
}
