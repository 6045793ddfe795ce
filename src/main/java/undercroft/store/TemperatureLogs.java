package undercroft.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32C;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;

/**
 * The temperature files of an open cellar. Other programs may write them too, so a file is looked at again before it is
 * replaced: what they added since goes into what is written, and a file they made something else of is left alone. Before
 * a write that does more than add lines at the end, the file as it was goes to the history.
 */
final class TemperatureLogs {
    private final CellarFolder folder;
    private final AtomicFile files;
    private final Clock clock;
    private final Map<String, Known> known = new HashMap<>();

    /** A file as it was when last read or written. */
    private record Known(TimeSeries series, long length, long checksum) {
        /** A file that is not there counts as one without a byte. */
        static final Known NOTHING = of(TimeSeries.empty(), new byte[0]);

        static Known of(TimeSeries series, byte[] bytes) {
            CRC32C checksum = new CRC32C();
            checksum.update(bytes);
            return new Known(series, bytes.length, checksum.getValue());
        }

        /** What whoever saves knows of, while the file holds more. */
        static Known less(TimeSeries series) {
            return new Known(series, -1, 0);
        }

        boolean isOf(byte[] bytes) {
            return bytes.length == length && of(series, bytes).checksum == checksum;
        }
    }

    TemperatureLogs(CellarFolder folder, AtomicFile files, Clock clock) {
        this.folder = folder;
        this.files = files;
        this.clock = clock;
    }

    /** The sound lines of a place's file; none when there is no file. */
    TimeSeries read(String placeId, List<InvalidInput> faults) {
        Path file = folder.temperatureFile(placeId);
        if (folder.kindOf(file) == Disk.Kind.NOTHING) {
            known.put(placeId, Known.NOTHING);
            return TimeSeries.empty();
        }
        byte[] bytes = TemperatureFile.bytes(folder.disk(), file);
        TimeSeries series = TemperatureFile.readWhatIsSound(bytes, TemperatureFile.nameOf(file), faults);
        known.put(placeId, Known.of(series, bytes));
        return series;
    }

    /** The sound lines of all files of a cellar's places; a file that cannot be read is told and left out. */
    LoggedTemperatures read(Cellar cellar) {
        return folder.temperatures(cellar, (placeId, bytes, celsius) -> known.put(placeId, Known.of(celsius, bytes)));
    }

    /**
     * Sorts samples into a place's file; where both have one instant the newer value stays. Returns what is there then.
     * Whoever shows the log does not know of them yet, so that they stay, as another program's do, in what it saves next.
     */
    TimeSeries merge(String placeId, TimeSeries newer) {
        Known shown = known.get(placeId);
        try {
            TimeSeries before = read(placeId, new ArrayList<>());
            return save(placeId, before.mergedWith(TemperatureFile.asWritten(newer, nameOf(placeId))));
        } finally {
            if (shown != null) {
                known.put(placeId, shown);
            }
        }
    }

    /**
     * Makes a place's file hold a series, and with it what another program added since the file was last read here.
     *
     * @return what the file holds then
     */
    TimeSeries save(String placeId, TimeSeries celsius) {
        Path file = folder.temperatureFile(placeId);
        TimeSeries wanted = TemperatureFile.asWritten(celsius, nameOf(placeId));
        files.makeFolder(folder.temperatureFolder(), "temperatures");
        boolean there = folder.kindOf(file) != Disk.Kind.NOTHING;
        byte[] bytes = there ? TemperatureFile.bytes(folder.disk(), file) : new byte[0];
        List<InvalidInput> faults = new ArrayList<>();
        TimeSeries onDisk = there ? soundLines(bytes, placeId, faults) : TimeSeries.empty();
        Known base = known.getOrDefault(placeId, Known.of(onDisk, bytes));
        TimeSeries result = base.isOf(bytes) ? wanted : withAdded(wanted, onDisk, base.series());
        if (there && faults.isEmpty() && result.equals(onDisk)) {
            known.put(placeId, result.equals(wanted) ? Known.of(onDisk, bytes) : Known.less(wanted));
            return onDisk;
        }
        if (there && (!faults.isEmpty() || !beginsWith(result, onDisk))) {
            history(placeId).keep(bytes, clock.instant());
        }
        byte[] printed = bytesOf(result);
        files.replace(file, printed, nameOf(placeId));
        known.put(placeId, result.equals(wanted) ? Known.of(result, printed) : Known.less(wanted));
        history(placeId).prune(clock.instant());
        return result;
    }

    private TimeSeries soundLines(byte[] bytes, String placeId, List<InvalidInput> faults) {
        if (TemperatureLines.isForeign(bytes)) {
            throw new InvalidInput(nameOf(placeId), "store.fault.foreign-log");
        }
        return TemperatureFile.readWhatIsSound(bytes, nameOf(placeId), faults);
    }

    private static byte[] bytesOf(TimeSeries series) {
        java.nio.ByteBuffer printed = TemperatureFile.print(series);
        byte[] bytes = new byte[printed.remaining()];
        printed.get(bytes);
        return bytes;
    }

    /** What is wanted, and of the file's samples those that another program added or changed where we did not. */
    private static TimeSeries withAdded(TimeSeries wanted, TimeSeries onDisk, TimeSeries base) {
        TimeSeries.Builder added = new TimeSeries.Builder();
        for (int i = 0; i < onDisk.size(); i++) {
            long time = onDisk.timeAt(i);
            double value = onDisk.valueAt(i);
            double before = at(base, time);
            double ours = at(wanted, time);
            boolean theirs = value != before;
            boolean oursToo = !Double.isNaN(ours) && ours != before;
            if (theirs && !oursToo) {
                added.add(time, value);
            }
        }
        return wanted.mergedWith(added.build());
    }

    /** The value at an instant, NaN where there is none. */
    private static double at(TimeSeries series, long time) {
        int index = series.indexAtOrBefore(time);
        return index >= 0 && series.timeAt(index) == time ? series.valueAt(index) : Double.NaN;
    }

    private static boolean beginsWith(TimeSeries series, TimeSeries beginning) {
        if (beginning.size() > series.size()) {
            return false;
        }
        for (int i = 0; i < beginning.size(); i++) {
            if (series.timeAt(i) != beginning.timeAt(i) || series.valueAt(i) != beginning.valueAt(i)) {
                return false;
            }
        }
        return true;
    }

    private History history(String placeId) {
        return History.ofTemperatures(folder, placeId, files);
    }

    private String nameOf(String placeId) {
        return TemperatureFile.nameOf(folder.temperatureFile(placeId));
    }
}
