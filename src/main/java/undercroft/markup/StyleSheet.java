package undercroft.markup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Style sheets that stand beside the classes that use them. */
public final class StyleSheet {
    private StyleSheet() {}

    /** The text of a sheet in the package of a class. */
    public static String beside(Class<?> user, String name) {
        try (InputStream stream = user.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
