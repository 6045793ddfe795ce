package undercroft.catalogue;

import java.util.Arrays;
import java.util.Collection;
import java.util.stream.Collectors;
import undercroft.quantity.InvalidInput;

/** An entry of a list, with the id that files and commands use. What a person reads of it is in the bundles. */
public interface Listed {
    String id();

    /** What the user called it; the id of what the program lists itself, which the bundles name. */
    default String label() {
        return id();
    }

    /** The entry with the id, or one sentence that names those there are. */
    static <T extends Listed> T find(Collection<T> entries, String id, String where) {
        for (T entry : entries) {
            if (entry.id().equalsIgnoreCase(id)) {
                return entry;
            }
        }
        String known = entries.stream().map(Listed::id).collect(Collectors.joining(", "));
        throw new InvalidInput(where, "fault.unknown", String.valueOf(id), known);
    }

    /** The entry of a fixed list with the id. */
    static <T extends Enum<T> & Listed> T find(Class<T> list, String id, String where) {
        return find(Arrays.asList(list.getEnumConstants()), id, where);
    }
}
