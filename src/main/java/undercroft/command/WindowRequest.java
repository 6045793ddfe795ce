package undercroft.command;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What the window is to begin with.
 *
 * @param folder the cellar; empty for the last one, or for the page on which one begins
 * @param demo the demo instead
 */
public record WindowRequest(Optional<Path> folder, boolean demo) {
    private static final String DEMO = "--demo";

    /** From one program to the toolkit's own start, which takes texts only. */
    public String[] arguments() {
        return demo ? new String[] {DEMO} : folder.map(Path::toString).stream().toArray(String[]::new);
    }

    /** See {@link #arguments}. */
    public static WindowRequest of(Iterable<String> arguments) {
        for (String argument : arguments) {
            return argument.equals(DEMO)
                    ? new WindowRequest(Optional.empty(), true)
                    : new WindowRequest(Optional.of(Path.of(argument)), false);
        }
        return new WindowRequest(Optional.empty(), false);
    }
}
