package undercroft.store.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;

/**
 * Replaces a file as a whole or not at all. It is the only way anything in the program is written.
 *
 * <p>The new content goes to a new file beside the old one, {@code <name>.<16 random hex digits>.tmp}, is forced to the
 * disk and renamed over the old file; then the folder is forced. Links are not followed: where one stands in the place
 * of the file, nothing is written. When a step fails:
 *
 * <ul>
 *   <li>making, writing or forcing the new file (disk full, device gone), or renaming it (no permission, held by another
 *       program): the new file is deleted, the old one is untouched, and the fault is told;
 *   <li>deleting the new file after a failure: ignored; {@link #removeLeftovers} or {@link #removeAbandoned} takes it away later;
 *   <li>forcing the folder: the new file is there and complete, but might be lost in a power cut. {@link #confirm} tells
 *       that, and tries again each time it is called. Systems that know no such call are none the worse: after a power
 *       cut either the old file or the new one is there;
 *   <li>the program dies between two steps: the old file or the new one is there whole, perhaps with a leftover beside it.
 * </ul>
 *
 * <p>A write-protected file is refused, though a rename would go over it; the permissions of the old file go to the new
 * one. Two writers at a time are kept apart by the lock of the cellar, not here.
 */
public final class AtomicFile {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int RANDOM_BYTES = 8;

    /** Longer than any file takes to be written. */
    private static final Duration ABANDONED_AFTER = Duration.ofHours(1);

    /** The second form is that of version 0.1. */
    private static final Pattern LEFTOVER = Pattern.compile(".+\\.[0-9a-f]{16}\\.tmp|cellar(-.+)?\\.json\\.tmp");

    private final Disk disk;
    private final Set<Path> unforced = new LinkedHashSet<>();

    public AtomicFile(Disk disk) {
        this.disk = disk;
    }

    public Disk disk() {
        return disk;
    }

    /** Replaces or creates the file; {@code name} is what the user calls it. */
    public void replace(Path file, byte[] content, String name) {
        replace(file, ByteBuffer.wrap(content), name);
    }

    /** What a file is to hold, given out piece by piece. */
    public interface Content {
        void into(Disk.Output out) throws IOException;

        static Content of(byte[] bytes) {
            return out -> out.write(ByteBuffer.wrap(bytes));
        }
    }

    public void replace(Path file, ByteBuffer content, String name) {
        try {
            NewFile prepared = prepare(file, out -> out.write(content));
            prepared.put();
        } catch (IOException failure) {
            throw refused(name, "store.fault.unwritten", failure);
        }
    }

    /** The same of a file that is its owner's alone from its first byte on, whatever it was before. */
    public void replacePrivately(Path file, byte[] content, String name) {
        try {
            NewFile prepared = prepare(file, Content.of(content), true);
            prepared.put();
        } catch (IOException failure) {
            throw refused(name, "store.fault.unwritten", failure);
        }
    }

    /** A file's new content, forced to the disk beside it and not yet in its place. */
    final class NewFile {
        private final Path beside;
        private final Path file;

        private NewFile(Path beside, Path file) {
            this.beside = beside;
            this.file = file;
        }

        /** Puts it in its place. */
        void put() throws IOException {
            boolean there = false;
            try {
                disk.rename(beside, file);
                there = true;
            } finally {
                if (!there) {
                    discard(beside);
                }
            }
            force(file.getParent());
        }

        void giveUp() {
            discard(beside);
        }
    }

    /**
     * Replaces or creates several files of one disk: all are written and forced beside their places before the first is
     * renamed, so that a full disk leaves none of them. Where a rename fails in the middle, those before it are new.
     */
    public void replaceAll(Map<Path, Content> contents, String name) {
        List<NewFile> prepared = new ArrayList<>();
        int put = 0;
        try {
            for (Map.Entry<Path, Content> each : contents.entrySet()) {
                prepared.add(prepare(each.getKey(), each.getValue()));
            }
            while (put < prepared.size()) {
                prepared.get(put++).put();
            }
        } catch (IOException failure) {
            throw put == 0
                    ? refused(name, "store.fault.unwritten", failure)
                    : new InvalidInput(name, "store.fault.in-part", reason(failure));
        } finally {
            prepared.subList(put, prepared.size()).forEach(NewFile::giveUp);
        }
    }

    private void force(Path folder) {
        try {
            disk.forceFolder(folder);
            unforced.remove(folder);
        } catch (IOException failure) {
            unforced.add(folder);
        }
    }

    /** Makes sure that the disk has the names of all that was written; a fault where the system cannot say so. */
    public void confirm() {
        for (Path folder : List.copyOf(unforced)) {
            try {
                disk.forceFolder(folder);
                unforced.remove(folder);
            } catch (IOException failure) {
                throw new InvalidInput(
                        String.valueOf(folder.getFileName()), "store.fault.unconfirmed", reason(failure));
            }
        }
    }

    NewFile prepare(Path file, Content content) throws IOException {
        return prepare(file, content, false);
    }

    private NewFile prepare(Path file, Content content, boolean isPrivate) throws IOException {
        Path target = file.toAbsolutePath();
        Disk.Kind kind = disk.entry(target).kind();
        switch (kind) {
            case LINK -> throw new Obstacle("store.reason.link");
            case FOLDER -> throw new Obstacle("store.reason.folder");
            case OTHER -> throw new Obstacle("store.reason.device");
            case FILE -> {
                if (!Files.isWritable(target)) {
                    throw new Obstacle("store.reason.write-protected");
                }
            }
            case NOTHING -> {}
        }
        Path beside = target.resolveSibling(target.getFileName() + "." + randomHex() + ".tmp");
        boolean complete = false;
        // Whatever ends this early, running out of memory too, must not leave half a file.
        try {
            try (Disk.Output out = isPrivate ? disk.createPrivate(beside) : disk.create(beside)) {
                content.into(out);
                out.force();
            }
            if (kind == Disk.Kind.FILE && !isPrivate) {
                keepPermissions(target, beside);
            }
            complete = true;
        } finally {
            if (!complete) {
                discard(beside);
            }
        }
        return new NewFile(beside, target);
    }

    private static String randomHex() {
        byte[] bytes = new byte[RANDOM_BYTES];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    private static void keepPermissions(Path from, Path to) {
        try {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from, LinkOption.NOFOLLOW_LINKS));
        } catch (IOException | UnsupportedOperationException withoutPermissions) {
            // Not every file system has them, and the content matters more.
        }
    }

    /** Gives a file another name, in its folder or in another one of the same disk. */
    public void rename(Path file, Path renamed, String name) {
        try {
            disk.rename(file, renamed);
            force(renamed.toAbsolutePath().getParent());
        } catch (IOException failure) {
            throw refused(name, "store.fault.unrenamed", failure);
        }
    }

    /**
     * Makes a folder and those above it, where they are not there.
     *
     * @return those made, the innermost first, so that they can be taken away again in that order
     */
    public List<Path> makeFolders(Path folder, String name) {
        Path absolute = folder.toAbsolutePath().normalize();
        Deque<Path> made = new ArrayDeque<>();
        try {
            makeFolders(absolute, made);
        } catch (IOException failure) {
            made.forEach(this::discard);
            throw new InvalidInput(name, "store.fault.unmade-unwritten", reason(failure));
        }
        return List.copyOf(made);
    }

    private void makeFolders(Path folder, Deque<Path> made) throws IOException {
        // What is there already may be reached through links: it is the user's own path.
        if (Files.isDirectory(folder)) {
            return;
        }
        if (folder.getParent() != null) {
            makeFolders(folder.getParent(), made);
        }
        disk.makeFolder(folder);
        made.push(folder);
    }

    /** Makes a folder of an unforeseeable name in another one, which nobody but its owner may look into. */
    public Path makePrivateFolder(Path parent, String beginning) {
        Path folder = parent.resolve(beginning + "-" + randomHex());
        try {
            disk.makePrivateFolder(folder);
            return folder;
        } catch (IOException failure) {
            throw new InvalidInput(folder.toString(), "store.fault.unmade", reason(failure));
        }
    }

    /** Makes one folder where it is not there; a link in its place is refused. */
    public void makeFolder(Path folder, String name) {
        try {
            Disk.Kind kind = disk.entry(folder).kind();
            if (kind == Disk.Kind.LINK) {
                throw new Obstacle("store.reason.link");
            }
            if (kind != Disk.Kind.FOLDER) {
                disk.makeFolder(folder);
            }
        } catch (IOException failure) {
            throw new InvalidInput(name, "store.fault.unmade-unsaved", reason(failure));
        }
    }

    /** Deletes a file that may stay when it cannot be deleted. */
    public void discard(Path file) {
        try {
            disk.delete(file);
        } catch (IOException failure) {
            // Stays: it is surplus, and the failure that led here, if any, is the one to tell.
        }
    }

    /** Deletes what writers that died left in a folder. Only for whoever holds the lock: a living writer's is there too. */
    public void removeLeftovers(Path folder) {
        removeLeftovers(folder, (entry, modified) -> true);
    }

    /**
     * Deletes what writers that died left in a folder that no lock is held on, where other people's files lie too: only
     * what is older by an hour than now, as a living writer's is younger.
     *
     * @param of the file they were to become
     */
    public void removeAbandoned(Path folder, Instant now, Predicate<String> of) {
        FileTime youngest = FileTime.from(now.minus(ABANDONED_AFTER));
        removeLeftovers(folder, (name, modified) -> {
            String file = name.replaceFirst("\\.[0-9a-f]{16}\\.tmp$", "");
            return modified.compareTo(youngest) < 0 && !file.equals(name) && of.test(file);
        });
    }

    private void removeLeftovers(Path folder, BiPredicate<String, FileTime> which) {
        try {
            if (disk.entry(folder).kind() == Disk.Kind.FOLDER) {
                for (Path entry : disk.list(folder)) {
                    Disk.Entry found = disk.entry(entry);
                    if (isLeftover(entry)
                            && found.kind() == Disk.Kind.FILE
                            && which.test(entry.getFileName().toString(), found.modified())) {
                        disk.delete(entry);
                    }
                }
            }
        } catch (IOException failure) {
            // They are surplus; the next writer tries again.
        }
    }

    /** Deletes the oldest files of a folder so that this many are left; folders and links in it are let be. */
    public void keepNewest(Path folder, int most) {
        try {
            if (disk.entry(folder).kind() != Disk.Kind.FOLDER) {
                return;
            }
            Map<Path, FileTime> files = new LinkedHashMap<>();
            for (Path entry : disk.list(folder)) {
                Disk.Entry found = disk.entry(entry);
                if (found.kind() == Disk.Kind.FILE) {
                    files.put(entry, found.modified());
                }
            }
            List<Path> oldestFirst = files.keySet().stream()
                    .sorted(Comparator.comparing((Path file) -> files.get(file)).thenComparing(file -> file))
                    .toList();
            for (Path file : oldestFirst.subList(0, Math.max(0, oldestFirst.size() - most))) {
                disk.delete(file);
            }
        } catch (IOException failure) {
            // They are surplus; the next writer tries again.
        }
    }

    /** Whether an entry is named as a file that is being written. */
    public static boolean isLeftover(Path entry) {
        return LEFTOVER.matcher(entry.getFileName().toString()).matches();
    }

    private static InvalidInput refused(String name, String key, IOException failure) {
        InvalidInput fault = new InvalidInput(name, key, reason(failure));
        fault.initCause(failure);
        return fault;
    }

    /** Why the system refused: a phrase, or its own words where it has more to say. */
    public static Object reason(IOException failure) {
        if (failure instanceof Obstacle obstacle) {
            return obstacle.phrase();
        }
        if (failure instanceof AccessDeniedException) {
            return Phrase.of("store.reason.permission");
        }
        if (failure instanceof NoSuchFileException) {
            return Phrase.of("store.reason.gone");
        }
        if (failure instanceof java.nio.file.FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
    }
}
