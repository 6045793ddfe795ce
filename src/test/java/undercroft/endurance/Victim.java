package undercroft.endurance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import undercroft.cellar.Cellar;
import undercroft.series.TimeSeries;
import undercroft.session.IncomingFiles;
import undercroft.store.CellarStore;
import undercroft.store.Export;
import undercroft.store.Export.Replacing;
import undercroft.store.Incoming;

/**
 * A program of its own that does several kinds of work at once, again and again, each in a folder of its own, says the
 * number of each piece that is done and on the disk, and is killed meanwhile: {@code Victim <folder> <number of the first
 * piece of each kind>}.
 */
final class Victim {
    static final Clock CLOCK = Clock.systemUTC();
    static final String PLACE = "loft";

    private Victim() {}

    /** What is done again and again. Piece {@code n} leaves something behind that tells its number. */
    enum Work {
        SAVE {
            @Override
            Piece of(Path folder) {
                CellarStore store = open(folder);
                return n -> store.save(store.cellar().withName(named(n)));
            }
        },
        IMPORT {
            @Override
            Piece of(Path folder) {
                CellarStore store = open(folder);
                Incoming incoming = Incoming.of(folder);
                return n -> {
                    incoming.drop(PLACE, sample(n), CLOCK.instant());
                    IncomingFiles.takeInAlone(store);
                };
            }
        },
        UPGRADE {
            @Override
            Piece of(Path folder) {
                return n -> {
                    try (CellarStore store = open(folder.resolve("" + n))) {
                        store.save(store.cellar().withName(named(n)));
                    }
                };
            }
        },
        REPORT {
            @Override
            Piece of(Path folder) {
                Map<String, String> texts = texts(folder);
                return n -> Export.ofTexts().texts(folder, marked(texts, n), Replacing.OURS);
            }
        };

        abstract Piece of(Path folder);
    }

    interface Piece {
        void done(int n);
    }

    static CellarStore open(Path folder) {
        return CellarStore.open(folder, CLOCK, "victim");
    }

    static String named(int n) {
        return "Save " + n;
    }

    /** The number in the name of a cellar, 0 where it has none yet. */
    static int numberOf(Cellar cellar) {
        return cellar.name().startsWith("Save ")
                ? Integer.parseInt(cellar.name().substring("Save ".length()))
                : 0;
    }

    static TimeSeries sample(int n) {
        return TimeSeries.of(new long[] {600L * n}, new double[] {10 + n % 10});
    }

    /** Every file of a report by name, without the mark. */
    static Map<String, String> texts(Path report) {
        try (Stream<Path> files = Files.walk(report)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : files.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().endsWith(".tmp"))
                    .toList()) {
                String text = Files.readString(file);
                int mark = text.lastIndexOf("\nmark ");
                texts.put(report.relativize(file).toString(), mark < 0 ? text : text.substring(0, mark));
            }
            return texts;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static Map<String, String> marked(Map<String, String> texts, int n) {
        Map<String, String> marked = new TreeMap<>();
        texts.forEach((name, text) -> marked.put(name, text + "\nmark " + n + "\n"));
        return marked;
    }

    public static void main(String[] arguments) {
        Iterator<String> numbers = List.of(arguments).listIterator(1);
        for (Work work : Work.values()) {
            int first = Integer.parseInt(numbers.next());
            new Thread(() -> goOn(work, Path.of(arguments[0], work.name()), first)).start();
        }
    }

    /** Ends by itself when nobody listens any more. */
    private static void goOn(Work work, Path folder, int first) {
        Piece piece = work.of(folder);
        for (int n = first; !System.out.checkError(); n++) {
            piece.done(n);
            System.out.println(work + " " + n);
        }
    }
}
