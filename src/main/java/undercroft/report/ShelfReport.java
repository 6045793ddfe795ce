package undercroft.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import undercroft.outlook.CellarOutlook;
import undercroft.quantity.InvalidInput;

/** The shelf written into a folder. */
public final class ShelfReport {
    private ShelfReport() {}

    public static void write(Path folder, CellarOutlook outlook) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("report.json"), ShelfJson.of(outlook));
        } catch (IOException fault) {
            throw new InvalidInput(folder.toString(), "cannot be written (" + fault.getMessage() + ")");
        }
    }
}
