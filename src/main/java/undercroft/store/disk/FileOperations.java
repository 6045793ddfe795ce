package undercroft.store.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The few things the store does to a disk, one call each, so that a test can make any of them fail. */
public interface FileOperations {
    FileOperations DISK = new FileOperations() {};

    /** Writes the whole file and waits until the disk has it. */
    default void write(Path file, ByteBuffer content) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            while (content.hasRemaining()) {
                channel.write(content);
            }
            channel.force(true);
        }
    }

    /** Puts one file in the place of another in a single step. */
    default void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Waits until the disk has the names in a folder. Not every system lets a folder be opened. */
    default void forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    default void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
