package undercroft.store.disk;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The few things the program does to a disk, one call each, so that a test can make any of them fail. No call follows a
 * symbolic link in the last part of a path; whoever wants one followed resolves it first.
 */
public interface Disk {
    /** The disk of this machine. */
    Disk REAL = new Disk() {};

    /** More entries than any folder of ours holds; a folder with more is not listed to its end. */
    int MOST_ENTRIES = 100_000;

    /** What stands at a path. */
    enum Kind {
        NOTHING,
        FILE,
        FOLDER,
        LINK,
        /** A pipe, a device, a socket: reading it may never end. */
        OTHER
    }

    /** What is told of an entry without opening it. */
    record Entry(Kind kind, long bytes, FileTime modified) {}

    /** A file being written. */
    interface Output extends Closeable {
        /** Writes all that remains in the buffer. */
        void write(ByteBuffer content) throws IOException;

        /** Waits until the disk has what was written. */
        void force() throws IOException;
    }

    default Entry entry(Path path) throws IOException {
        try {
            BasicFileAttributes found =
                    Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            Kind kind = found.isRegularFile()
                    ? Kind.FILE
                    : found.isDirectory() ? Kind.FOLDER : found.isSymbolicLink() ? Kind.LINK : Kind.OTHER;
            return new Entry(kind, found.size(), found.lastModifiedTime());
        } catch (NoSuchFileException nothing) {
            return new Entry(Kind.NOTHING, 0, FileTime.fromMillis(0));
        }
    }

    /** Begins a file that must not be there yet. */
    default Output create(Path file) throws IOException {
        return create(file, new FileAttribute<?>[0]);
    }

    /** The same of a file that, where the disk knows owners, is its owner's alone. */
    default Output createPrivate(Path file) throws IOException {
        return knowsOwners(file)
                ? create(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")))
                : create(file);
    }

    private static boolean knowsOwners(Path entry) throws IOException {
        return Files.getFileStore(entry.toAbsolutePath().getParent())
                .supportsFileAttributeView(PosixFileAttributeView.class);
    }

    private static Output create(Path file, FileAttribute<?>... attributes) throws IOException {
        FileChannel channel = FileChannel.open(
                file,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS),
                attributes);
        return new Output() {
            @Override
            public void write(ByteBuffer content) throws IOException {
                while (content.hasRemaining()) {
                    channel.write(content);
                }
            }

            @Override
            public void force() throws IOException {
                channel.force(true);
            }

            @Override
            public void close() throws IOException {
                channel.close();
            }
        };
    }

    /** Puts one entry in the place of another, or of nothing, in a single step. */
    default void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Waits until the disk has the names in a folder.
     *
     * @return false where the system lets no folder be opened or forced, which is no failure
     */
    default boolean forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
            return true;
        } catch (AccessDeniedException notOnThisSystem) {
            return false;
        } catch (IOException failure) {
            // EINVAL: some network file systems know no such call.
            String reason = failure.getMessage();
            if (reason != null && (reason.contains("Invalid argument") || reason.contains("not supported"))) {
                return false;
            }
            throw failure;
        }
    }

    /** Deletes a file, or an empty folder; nothing happens when there is none. */
    default void delete(Path entry) throws IOException {
        Files.deleteIfExists(entry);
    }

    /** Makes one folder, unless it is there. */
    default void makeFolder(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
        } catch (FileAlreadyExistsException there) {
            if (entry(folder).kind() != Kind.FOLDER) {
                throw there;
            }
        }
    }

    /** Makes a folder that must not be there yet and, where the disk knows owners, is its owner's alone. */
    default void makePrivateFolder(Path folder) throws IOException {
        if (knowsOwners(folder)) {
            Files.createDirectory(
                    folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectory(folder);
        }
    }

    /** A file's bytes, {@code most} at most and one more when there are more. */
    default byte[] read(Path file, int most) throws IOException {
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return in.readNBytes(most == Integer.MAX_VALUE ? most : most + 1);
        }
    }

    /** Opens a file to be read in pieces. */
    default SeekableByteChannel openToRead(Path file) throws IOException {
        return Files.newByteChannel(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
    }

    /** What is in a folder, in the order of the names. */
    default List<Path> list(Path folder) throws IOException {
        List<Path> entries = new ArrayList<>();
        try (DirectoryStream<Path> found = Files.newDirectoryStream(folder)) {
            for (Path entry : found) {
                if (entries.size() == MOST_ENTRIES) {
                    throw new Obstacle("store.reason.crowded", MOST_ENTRIES);
                }
                entries.add(entry);
            }
        } catch (DirectoryIteratorException failure) {
            throw failure.getCause();
        }
        entries.sort(null);
        return entries;
    }

    /** Opens the file that a lock is held on, making it where it is not there. */
    default FileChannel openToLock(Path file) throws IOException {
        return FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    }
}
