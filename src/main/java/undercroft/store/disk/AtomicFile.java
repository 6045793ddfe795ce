package undercroft.store.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import undercroft.quantity.InvalidInput;

/**
 * Replaces a file as a whole or not at all.
 *
 * <p>The new content goes to {@code <name>.tmp} beside the file, is forced to the disk and renamed over the file; then
 * the folder is forced. When a step fails:
 *
 * <ul>
 *   <li>writing or forcing (disk full, device gone): the temporary file is deleted, the old file is untouched;
 *   <li>renaming (no permission, file held by another program): the same;
 *   <li>deleting the temporary file after a failure: ignored; the next write uses the same name again;
 *   <li>forcing the folder: ignored, since some systems refuse it; the new file is complete, and after a power cut either
 *       the old or the new one is there;
 *   <li>the program dies between two steps: the old file is there, perhaps with a temporary file beside it.
 * </ul>
 *
 * <p>A write-protected file is refused, though a rename would go over it; the permissions of the old file go to the new
 * one. A file that is a symbolic link stays one: what it points to is replaced. Two writers at a time are kept apart by the
 * lock of the cellar, not here.
 */
public final class AtomicFile {
    private final FileOperations operations;

    public AtomicFile(FileOperations operations) {
        this.operations = operations;
    }

    /** Replaces or creates the file; {@code name} is what the user calls it. */
    public void replace(Path file, byte[] content, String name) {
        replace(file, ByteBuffer.wrap(content), name);
    }

    public void replace(Path file, ByteBuffer content, String name) {
        try {
            Path target = Files.exists(file) ? file.toRealPath() : file;
            Path beside = target.resolveSibling(target.getFileName() + ".tmp");
            if (Files.exists(target) && !Files.isWritable(target)) {
                throw new IOException("write-protected");
            }
            try {
                operations.write(beside, content);
                keepPermissions(target, beside);
                operations.rename(beside, target);
            } catch (IOException failure) {
                discard(beside);
                throw failure;
            }
            forceFolder(target.getParent());
        } catch (IOException failure) {
            throw refused(name, "could not be written", failure);
        }
    }

    private static void keepPermissions(Path from, Path to) {
        try {
            if (Files.exists(from)) {
                Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
            }
        } catch (IOException | UnsupportedOperationException withoutPermissions) {
            // Not every file system has them, and the content matters more.
        }
    }

    /** Gives a file another name in its folder. */
    public void rename(Path file, Path renamed, String name) {
        try {
            operations.rename(file, renamed);
            forceFolder(renamed.getParent());
        } catch (IOException failure) {
            throw refused(name, "could not be renamed", failure);
        }
    }

    /** Deletes a file that may stay when it cannot be deleted. */
    public void discard(Path file) {
        try {
            operations.delete(file);
        } catch (IOException failure) {
            // Stays: it is surplus, and the failure that led here is the one to tell.
        }
    }

    private void forceFolder(Path folder) {
        try {
            operations.forceFolder(folder);
        } catch (IOException failure) {
            // See the class comment: not every system allows it.
        }
    }

    private static InvalidInput refused(String name, String what, IOException failure) {
        InvalidInput fault =
                new InvalidInput(name, what + " (" + reason(failure) + "); what was there before is untouched");
        fault.initCause(failure);
        return fault;
    }

    /** Why the system refused, in its own words or those of the kind of failure. */
    public static String reason(IOException failure) {
        if (failure instanceof java.nio.file.AccessDeniedException) {
            return "no permission";
        }
        if (failure instanceof java.nio.file.NoSuchFileException) {
            return "the folder is gone";
        }
        if (failure instanceof java.nio.file.FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }
}
