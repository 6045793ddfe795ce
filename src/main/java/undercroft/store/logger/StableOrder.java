package undercroft.store.logger;

/** The order that sorts times and keeps equal ones as they stand, without boxes: a merge sort from runs upward. */
final class StableOrder {
    private StableOrder() {}

    static int[] of(long[] times, int size) {
        int[] order = new int[size];
        int[] spare = new int[size];
        for (int i = 0; i < size; i++) {
            order[i] = i;
        }
        for (long width = 1; width < size; width *= 2) {
            for (long low = 0; low < size; low += 2 * width) {
                int middle = (int) Math.min(low + width, size);
                merge(times, order, spare, (int) low, middle, (int) Math.min(low + 2 * width, size));
            }
            int[] swap = order;
            order = spare;
            spare = swap;
        }
        return order;
    }

    private static void merge(long[] times, int[] from, int[] into, int low, int middle, int high) {
        int left = low;
        int right = middle;
        for (int i = low; i < high; i++) {
            boolean takeLeft = left < middle && (right >= high || times[from[left]] <= times[from[right]]);
            into[i] = takeLeft ? from[left++] : from[right++];
        }
    }
}
