package undercroft.command;

import java.util.function.Supplier;
import undercroft.quantity.InvalidInput;

/** Gives a calculation's fault the name of the option it came from. */
final class OptionFaults {
    private OptionFaults() {}

    /** Runs {@code work}; {@code namesAndOptions} are pairs of a place as the calculation knows it and its option. */
    static <T> T naming(Supplier<T> work, String... namesAndOptions) {
        try {
            return work.get();
        } catch (InvalidInput fault) {
            for (int i = 0; i < namesAndOptions.length; i += 2) {
                if (fault.where().equals(namesAndOptions[i])) {
                    throw fault.at(namesAndOptions[i + 1]);
                }
            }
            throw fault;
        }
    }
}
