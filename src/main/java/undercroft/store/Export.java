package undercroft.store;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.AtomicFile.Content;
import undercroft.store.disk.Disk;

/**
 * Pages, calendars, tables and sheets that leave the program, written where the user names a place. Nothing is written
 * into a cellar folder, and no file is replaced that the program did not write itself, unless the user says so. Of a set
 * of files all are written or none. The place named may be reached through links; in a folder named, none is followed.
 */
public final class Export {
    /** Which files may be replaced. */
    public enum Replacing {
        /** Those that begin as one of ours does. */
        OURS,
        /** Any: the user was asked. */
        ANY
    }

    private static final int HEAD = 2_048;
    private static final String FOREIGN = "export.fault.foreign";

    /** How the files we hand out begin: report, series, experiment, calendar, page, feed. */
    private static final List<Pattern> OUR_BEGINNINGS = List.of(
            Pattern.compile("\\{\\s*\"schema\"\\s*:\\s*\\d+\\s*,\\s*\"at\"\\s*:\\s*\"[^\"]*\"\\s*,\\s*\"cellar\"\\s*:"),
            Pattern.compile("time_utc,lot,carbonation_low_vol,"),
            Pattern.compile("kind,hours,value,unit\\r\\nformat,,"),
            Pattern.compile("BEGIN:VCALENDAR\\r\\n(?:VERSION:[^\\r]*\\r\\n)?PRODID:-//Undercroft//"),
            Pattern.compile("<\\?xml [^>]*\\?>\\s*<feed [^>]*>\\s*<generator[^>]*>Undercroft</generator>"),
            Pattern.compile(
                    "<!DOCTYPE html>\\s*<html[^>]*>\\s*<head>(?s:.*)<meta name=\"generator\" content=\"Undercroft\""));

    private final AtomicFile files;

    private Export(Disk disk) {
        this.files = new AtomicFile(disk);
    }

    /** Exports to the disk of this machine. */
    public static Export ofTexts() {
        return on(Disk.REAL);
    }

    /** The same to another disk. */
    public static Export on(Disk disk) {
        return new Export(disk);
    }

    /**
     * Writes one file.
     *
     * @return the file
     */
    public Path file(Path file, String text, Replacing replacing) {
        Path absolute = file.toAbsolutePath().normalize();
        Path folder = absolute.getParent();
        if (folder == null) {
            throw new InvalidInput(file.toString(), "export.fault.folder");
        }
        write(folder, Map.of(resolved(absolute), utf8(text)), file.toString(), replacing);
        return file;
    }

    /** Writes one file that is no text, such as a picture, over anything: the user was asked. */
    public Path bytes(Path file, byte[] content) {
        Path absolute = file.toAbsolutePath().normalize();
        Path folder = absolute.getParent();
        if (folder == null) {
            throw new InvalidInput(file.toString(), "export.fault.folder");
        }
        write(folder, Map.of(resolved(absolute), Content.of(content)), file.toString(), Replacing.ANY);
        return file;
    }

    /** What a link the user named leads to; one that leads nowhere is refused where it is written. */
    private static Path resolved(Path file) {
        try {
            return Files.exists(file) ? file.toRealPath() : file;
        } catch (IOException unresolved) {
            return file;
        }
    }

    /**
     * Writes a set of files into a folder, which is made where it is not there.
     *
     * @param contents what writes each, by name; {@code series/ale.csv} lies in a folder inside
     * @return the files, in order
     */
    public List<Path> folder(Path folder, Map<String, Consumer<Writer>> contents, Replacing replacing) {
        return folder(folder, contents, Export::utf8, replacing);
    }

    /** As {@link #folder(Path, Map, Replacing)}, of texts that are there. */
    public List<Path> texts(Path folder, Map<String, String> texts, Replacing replacing) {
        return folder(folder, texts, Export::utf8, replacing);
    }

    private <T> List<Path> folder(Path folder, Map<String, T> all, Function<T, Content> content, Replacing replacing) {
        Map<Path, Content> contents = new LinkedHashMap<>();
        all.forEach((name, each) ->
                contents.put(folder.resolve(name).toAbsolutePath().normalize(), content.apply(each)));
        write(folder.toAbsolutePath().normalize(), contents, folder.toString(), replacing);
        return all.keySet().stream().map(folder::resolve).toList();
    }

    private static Content utf8(String text) {
        return Content.of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A text that goes to the disk in pieces, as it is made. */
    private static Content utf8(Consumer<Writer> text) {
        return out -> {
            try (Writer writer = new OutputStreamWriter(new Pieces(out), StandardCharsets.UTF_8)) {
                text.accept(writer);
            } catch (UncheckedIOException failure) {
                throw failure.getCause();
            }
        };
    }

    /** Collects what is written into pieces worth a call to the disk. */
    private static final class Pieces extends OutputStream {
        private final Disk.Output out;
        private final ByteBuffer piece = ByteBuffer.allocate(1 << 16);

        Pieces(Disk.Output out) {
            this.out = out;
        }

        @Override
        public void write(int each) throws IOException {
            write(new byte[] {(byte) each}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            for (int done = 0; done < count; ) {
                int some = Math.min(count - done, piece.remaining());
                piece.put(bytes, from + done, some);
                done += some;
                if (!piece.hasRemaining()) {
                    give();
                }
            }
        }

        /** The last piece; whoever flushes before that need not wait for the disk. */
        @Override
        public void close() throws IOException {
            give();
        }

        private void give() throws IOException {
            out.write(piece.flip());
            piece.clear();
        }
    }

    /** A folder of this run alone, which no other user of the machine can foresee or look into. */
    public Path privateFolder(Path parent) {
        return files.makePrivateFolder(parent, "undercroft");
    }

    /** Whether a fault says that a file is not one of ours. */
    public static boolean isForeign(InvalidInput fault) {
        return fault.key().equals(FOREIGN);
    }

    private void write(Path folder, Map<Path, Content> contents, String name, Replacing replacing) {
        List<Path> made = new ArrayList<>();
        boolean written = false;
        try {
            requireNoCellar(folder, name);
            made.addAll(files.makeFolders(folder, name));
            for (Path file : contents.keySet()) {
                requireNoCellar(file.getParent(), name);
                made.addAll(0, inside(folder, file.getParent(), name));
                requireReplaceable(file, replacing);
            }
            files.replaceAll(contents, name);
            written = true;
        } catch (IOException failure) {
            throw new InvalidInput(name, "export.fault.not-written", AtomicFile.reason(failure));
        } finally {
            if (!written) {
                made.forEach(files::discard);
            }
        }
        removeAbandoned(contents.keySet());
    }

    /** What exports that died left of the same files; the disk's own clock says how old it is. */
    private void removeAbandoned(Set<Path> written) {
        Map<Path, Set<String>> byFolder = new LinkedHashMap<>();
        written.forEach(file -> byFolder.computeIfAbsent(file.getParent(), any -> new HashSet<>())
                .add(file.getFileName().toString()));
        byFolder.forEach((folder, names) -> {
            try {
                Instant now = files.disk()
                        .entry(folder.resolve(names.iterator().next()))
                        .modified()
                        .toInstant();
                files.removeAbandoned(folder, now, names::contains);
            } catch (IOException failure) {
                // It is surplus; the next export tries again.
            }
        });
    }

    /** Makes a folder inside the one named; a link in its place is refused. */
    private List<Path> inside(Path folder, Path wanted, String name) throws IOException {
        boolean there = files.disk().entry(wanted).kind() != Disk.Kind.NOTHING;
        if (wanted.equals(folder) || !wanted.startsWith(folder)) {
            return List.of();
        }
        files.makeFolder(wanted, name);
        return there ? List.of() : List.of(wanted);
    }

    /** Looks at the folder and all above it, links resolved. */
    private void requireNoCellar(Path folder, String name) throws IOException {
        Path there = folder;
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        Path above = there == null ? null : there.toRealPath();
        for (; above != null; above = above.getParent()) {
            if (files.disk().entry(above.resolve(CellarFolder.FILE)).kind() != Disk.Kind.NOTHING) {
                throw new InvalidInput(name, "export.fault.cellar", above);
            }
        }
    }

    private void requireReplaceable(Path file, Replacing replacing) throws IOException {
        if (replacing == Replacing.ANY || files.disk().entry(file).kind() != Disk.Kind.FILE) {
            return;
        }
        String head = new String(files.disk().read(file, HEAD), StandardCharsets.UTF_8);
        if (!head.isEmpty()
                && OUR_BEGINNINGS.stream()
                        .noneMatch(beginning -> beginning.matcher(head).lookingAt())) {
            throw new InvalidInput(file.toString(), FOREIGN);
        }
    }
}
