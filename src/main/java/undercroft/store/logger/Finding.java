package undercroft.store.logger;

import java.util.List;

/**
 * Lines that share a reason.
 *
 * @param count how many
 * @param lines the numbers of the first {@value #LISTED} of them, counted from 1
 */
public record Finding(long count, List<Integer> lines) {
    static final int LISTED = 100;
    static final Finding NONE = new Finding(0, List.of());

    public Finding {
        lines = List.copyOf(lines);
    }
}
