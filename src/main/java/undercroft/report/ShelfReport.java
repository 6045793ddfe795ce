package undercroft.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.report.page.ShelfPage;
import undercroft.wording.ShelfWords;

/**
 * Writes the report of a shelf into a folder: {@code report.json}, {@code index.html} and a CSV file for each capped batch
 * under {@code series}. Each file is written beside its place and then renamed over it, so that a reader never meets half
 * of one; files of an earlier report that are not written again stay as they are.
 */
public final class ShelfReport {
    private final Path folder;
    private final List<Path> written = new ArrayList<>();

    private ShelfReport(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes it all, making the folder where it does not exist.
     *
     * @return the files written, in order
     * @throws InvalidInput when the folder is a file, may not be written to, or its disk fails
     */
    public static List<Path> write(Path folder, ShelfWords words) {
        ShelfReport report = new ShelfReport(folder);
        try {
            report.writeAll(words);
        } catch (IOException failure) {
            InvalidInput fault = new InvalidInput(folder.toString(), "report.fault.not-written", reason(failure));
            fault.initCause(failure);
            throw fault;
        }
        return List.copyOf(report.written);
    }

    private void writeAll(ShelfWords words) throws IOException {
        CellarOutlook outlook = words.outlook();
        Files.createDirectories(folder);
        write("report.json", ShelfJson.of(outlook));
        write("index.html", ShelfPage.of(words));
        List<BatchOutlook> capped =
                outlook.batches().stream().filter(BatchOutlook::isCapped).toList();
        if (!capped.isEmpty()) {
            Files.createDirectories(folder.resolve("series"));
        }
        for (BatchOutlook batch : capped) {
            write("series/" + batch.id() + ".csv", SeriesCsv.of(batch));
        }
    }

    private void write(String name, String content) throws IOException {
        Path file = folder.resolve(name);
        Path beside = file.resolveSibling(file.getFileName() + ".tmp");
        try {
            Files.write(beside, content.getBytes(StandardCharsets.UTF_8));
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException failure) {
            discard(beside, failure);
            throw failure;
        }
        written.add(file);
    }

    private static void discard(Path file, IOException failure) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException second) {
            failure.addSuppressed(second);
        }
    }

    private static Object reason(IOException failure) {
        if (failure instanceof FileAlreadyExistsException || failure instanceof NotDirectoryException) {
            return Phrase.of("report.fault.no-folder");
        }
        if (failure instanceof AccessDeniedException) {
            return Phrase.of("report.fault.no-permission");
        }
        if (failure instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }
}
