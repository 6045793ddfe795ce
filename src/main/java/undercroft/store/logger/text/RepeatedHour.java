package undercroft.store.logger.text;

/** Tells the two passes of the hour that comes twice apart, by the order of the lines alone. */
public final class RepeatedHour {
    private RepeatedHour() {}

    /**
     * Where the later-written pass begins.
     *
     * <p>A step back by at least half the repeated span begins it; smaller ones are mere disorder. Lines that all carry
     * one time, an even number of them, are an hourly log that met that time twice.
     *
     * @param local local seconds, all within one repeated span
     * @param span length of the repeated span in seconds, positive
     * @param newestFirst whether the file runs backward in time
     * @return index of the first line of the later-written pass, or −1 when there is only one pass
     */
    public static int secondPassFrom(long[] local, int from, int until, int span, boolean newestFirst) {
        int split = -1;
        long widest = 0;
        boolean single = true;
        for (int i = from + 1; i < until; i++) {
            long back = newestFirst ? local[i] - local[i - 1] : local[i - 1] - local[i];
            if (back > widest) {
                widest = back;
                split = i;
            }
            single &= local[i] == local[from];
        }
        if (single && (until - from) % 2 == 0) {
            return from + (until - from) / 2;
        }
        return widest * 2 >= span ? split : -1;
    }
}
