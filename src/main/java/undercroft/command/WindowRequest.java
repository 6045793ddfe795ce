package undercroft.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.wording.Language;

/**
 * What the window is to begin with.
 *
 * @param folder the cellar; empty for the last one, or for the page on which one begins
 * @param demo the demo instead
 * @param language what it speaks; empty for what is set
 */
public record WindowRequest(Optional<Path> folder, boolean demo, Optional<Language> language) {
    private static final String DEMO = "--demo";
    private static final String LANGUAGE = "--language=";

    /** From one program to the toolkit's own start, which takes texts only. */
    public String[] arguments() {
        List<String> arguments = new ArrayList<>();
        language.ifPresent(one -> arguments.add(LANGUAGE + one.id()));
        if (demo) {
            arguments.add(DEMO);
        } else {
            folder.map(Path::toString).ifPresent(arguments::add);
        }
        return arguments.toArray(new String[0]);
    }

    /** See {@link #arguments}. */
    public static WindowRequest of(Iterable<String> arguments) {
        WindowRequest request = new WindowRequest(Optional.empty(), false, Optional.empty());
        for (String argument : arguments) {
            if (argument.startsWith(LANGUAGE)) {
                request = new WindowRequest(
                        request.folder(), request.demo(), Language.of(argument.substring(LANGUAGE.length())));
            } else if (argument.equals(DEMO)) {
                request = new WindowRequest(Optional.empty(), true, request.language());
            } else {
                request = new WindowRequest(Optional.of(Path.of(argument)), false, request.language());
            }
        }
        return request;
    }
}
