package undercroft;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;

/**
 * What went wrong and should not have, in one file of the user's state folder that drops its oldest lines. It holds the
 * kinds of the faults and the lines of the program they came from; never their messages, which could hold a name, a path
 * or a note.
 */
record TroubleLog(Path folder, Clock clock) {
    static final String FILE = "undercroft.log";
    static final int MOST_BYTES = 200_000;
    private static final int DEEPEST = 60;
    private static final int CAUSES = 5;

    /** Notes a fault and returns the file to send along; empty when it cannot be written. Blocks on a disk. */
    Optional<Path> note(Throwable trouble) {
        try {
            Path file = folder.resolve(FILE);
            byte[] entry = entry(trouble).getBytes(StandardCharsets.UTF_8);
            byte[] before = before(file);
            int kept = Math.min(before.length, MOST_BYTES - Math.min(MOST_BYTES, entry.length));
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            all.writeBytes(fromLineOn(before, before.length - kept));
            all.writeBytes(entry);
            AtomicFile files = new AtomicFile(Disk.REAL);
            files.makeFolders(folder, FILE);
            files.replace(file, all.toByteArray(), FILE);
            return Optional.of(file);
        } catch (InvalidInput | VirtualMachineError notWritten) {
            return Optional.empty();
        }
    }

    private static byte[] before(Path file) {
        try {
            return new WholeFile(Disk.REAL).bytes(file, FILE, WholeFile.MOST_SMALL_BYTES);
        } catch (InvalidInput none) {
            return new byte[0];
        }
    }

    /** From the first whole line at or after a place. */
    private static byte[] fromLineOn(byte[] text, int from) {
        int begin = from;
        while (begin > 0 && begin < text.length && text[begin - 1] != '\n') {
            begin++;
        }
        return Arrays.copyOfRange(text, begin, text.length);
    }

    private static String version() {
        return String.valueOf(TroubleLog.class.getPackage().getImplementationVersion());
    }

    private String entry(Throwable trouble) {
        StringBuilder entry = new StringBuilder()
                .append(clock.instant())
                .append(" undercroft ")
                .append(version())
                .append('\n');
        Throwable each = trouble;
        for (int i = 0; each != null && i < CAUSES; i++) {
            entry.append(each.getClass().getName()).append('\n');
            Arrays.stream(each.getStackTrace())
                    .limit(DEEPEST)
                    .forEach(line -> entry.append("    ").append(line).append('\n'));
            each = each.getCause();
        }
        return entry.toString();
    }
}
