package undercroft.wording;

import java.util.Arrays;
import java.util.Locale;

/** The sentences in English, for rooms that are not yet handed their {@link Messages}. */
public final class Texts {
    private static final Messages ENGLISH = Messages.in(Locale.UK);

    private Texts() {}

    /** The sentence, the values set in as they print. */
    public static String of(String key, Object... values) {
        return ENGLISH.of(key, Arrays.stream(values).map(String::valueOf).toArray());
    }

    /** All of them. */
    public static Messages messages() {
        return ENGLISH;
    }

    /** A sentence whose {0} is a number that chooses between one and many. */
    public static String counted(String key, long count, Object... more) {
        Object[] values = new Object[more.length + 1];
        values[0] = count;
        System.arraycopy(more, 0, values, 1, more.length);
        return ENGLISH.of(key, values);
    }
}
