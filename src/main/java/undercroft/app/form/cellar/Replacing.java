package undercroft.app.form.cellar;

import java.util.ArrayList;
import java.util.List;
import undercroft.catalogue.Listed;

/** Lists with one entry replaced. */
final class Replacing {
    private Replacing() {}

    /** {@code entry} in place of the one with its id, or at the end. */
    static <T extends Listed> List<T> in(List<T> list, T entry) {
        List<T> all = new ArrayList<>(list);
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(entry.id())) {
                all.set(i, entry);
                return all;
            }
        }
        all.add(entry);
        return all;
    }

    static <T extends Listed> List<T> without(List<T> list, String id) {
        return list.stream().filter(entry -> !entry.id().equals(id)).toList();
    }
}
