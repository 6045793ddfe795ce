package undercroft;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Only classes whose source lies in {@code src/main/java}, however tests and program are compiled together. */
final class MainSources implements ImportOption {
    private static final Pattern TOP_LEVEL = Pattern.compile(".*/(undercroft/[\\w/]+)(\\$.*)?\\.class");

    @Override
    public boolean includes(Location location) {
        Matcher found = TOP_LEVEL.matcher(location.asURI().getPath());
        return found.matches() && Files.exists(Path.of("src/main/java", found.group(1) + ".java"));
    }
}
