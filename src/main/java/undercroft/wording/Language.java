package undercroft.wording;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The languages that are spoken, and the wish to follow the system's. */
public enum Language {
    SYSTEM(""),
    ENGLISH("en"),
    GERMAN("de");

    private final String id;

    Language(String id) {
        this.id = id;
    }

    /** As it is written on a command line and in the settings; empty for the system's. */
    public String id() {
        return id;
    }

    /** The language with that id; empty where it is not spoken. */
    public static Optional<Language> of(String id) {
        return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
    }

    /** What can be asked for by name. */
    public static List<String> ids() {
        return Arrays.stream(values())
                .map(Language::id)
                .filter(id -> !id.isEmpty())
                .toList();
    }

    /** Its sentences; {@code system} is the language of the machine, and keeps its country where it is spoken anyway. */
    public Messages messages(Locale system) {
        return switch (this) {
            case SYSTEM -> Messages.in(system);
            case ENGLISH -> system.getLanguage().equals(id) ? Messages.in(system) : Messages.english();
            case GERMAN -> Messages.in(system.getLanguage().equals(id) ? system : Locale.GERMANY);
        };
    }
}
