package undercroft.store.logger;

import undercroft.series.TimeSeries;

/**
 * What an import changes in a place's series. The newer import wins, but only where its value differs: importing a file
 * twice changes nothing, and imports that agree give one series in whatever order they come.
 *
 * @param series the place's series afterwards; the same object as before when nothing changed
 * @param added samples at times that had none
 * @param alreadyThere samples that were there with the same value
 * @param replaced samples that had another value, which the import's took the place of
 * @param firstReplaced epoch second of the first of them; 0 when there is none
 * @param largestChange largest difference among them, in K
 */
public record ImportMerge(
        TimeSeries series, int added, int alreadyThere, int replaced, long firstReplaced, double largestChange) {
    /** Closer values are one value: a file written with three decimals gives back what was put in. */
    private static final double SAME_WITHIN_KELVIN = 0.001;

    public static ImportMerge of(TimeSeries existing, TimeSeries imported) {
        TimeSeries.Builder merged = new TimeSeries.Builder();
        int added = 0;
        int there = 0;
        int replaced = 0;
        long first = 0;
        double largest = 0;
        int i = 0;
        for (int j = 0; j < imported.size(); j++) {
            long time = imported.timeAt(j);
            double value = imported.valueAt(j);
            while (i < existing.size() && existing.timeAt(i) < time) {
                merged.add(existing.timeAt(i), existing.valueAt(i));
                i++;
            }
            if (i < existing.size() && existing.timeAt(i) == time) {
                double change = Math.abs(existing.valueAt(i) - value);
                if (change < SAME_WITHIN_KELVIN) {
                    there++;
                    value = existing.valueAt(i);
                } else {
                    first = replaced == 0 ? time : first;
                    replaced++;
                    largest = Math.max(largest, change);
                }
                i++;
            } else {
                added++;
            }
            merged.add(time, value);
        }
        if (added + replaced == 0) {
            return new ImportMerge(existing, 0, there, 0, 0, 0);
        }
        for (; i < existing.size(); i++) {
            merged.add(existing.timeAt(i), existing.valueAt(i));
        }
        return new ImportMerge(merged.build(), added, there, replaced, first, largest);
    }

    public boolean changesNothing() {
        return added + replaced == 0;
    }
}
