package undercroft.app.form;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import undercroft.quantity.Check;

/** Makes the short ids that files use out of the names people give. */
public final class Slug {
    private static final int LONGEST = 40;

    private Slug() {}

    /** Lower-case ASCII letters and digits of {@code name} joined by hyphens; {@code otherwise} where none are left. */
    public static String of(String name, String otherwise, Collection<String> taken) {
        String plain = Normalizer.normalize(name.replace("ß", "ss"), Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-");
        String cut = plain.substring(0, Math.min(LONGEST, plain.length())).replaceAll("^-+|-+$", "");
        String base = cut.isEmpty() ? otherwise : cut;
        String slug = base;
        for (int n = 2; taken.contains(slug) || Check.isDevice(slug); n++) {
            slug = base + "-" + n;
        }
        return slug;
    }
}
