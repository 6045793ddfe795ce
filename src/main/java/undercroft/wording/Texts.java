package undercroft.wording;

import java.util.Locale;
import java.util.ResourceBundle;

/** Every word of the window, by key {@code view.part.meaning}. English only. */
public final class Texts {
    private static final ResourceBundle WORDS = ResourceBundle.getBundle("undercroft.wording.texts", Locale.ROOT);

    private Texts() {}

    /** The text with {@code {0}}, {@code {1}} ... replaced by the values as they print. */
    public static String of(String key, Object... values) {
        String text = WORDS.getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    /** As {@link #of}, of two texts: {@code key.one} for one, {@code key.many} for any other number, which is {0}. */
    public static String counted(String key, long count, Object... more) {
        Object[] values = new Object[more.length + 1];
        values[0] = count;
        System.arraycopy(more, 0, values, 1, more.length);
        return of(key + (count == 1 ? ".one" : ".many"), values);
    }
}
