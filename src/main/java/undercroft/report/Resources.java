package undercroft.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Style sheets that stand beside this room's classes in the jar. */
final class Resources {
    private Resources() {}

    static String text(String name) {
        try (InputStream stream = Resources.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
