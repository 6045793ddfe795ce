package undercroft.store.logger.text;

import java.util.Arrays;

/**
 * The order that sorts times and keeps equal ones as they stand, without boxes. Merges the runs it finds, since a log is
 * mostly in order, or all of it backward.
 */
public final class StableOrder {
    private final long[] times;
    private int[] order;
    private int[] spare;
    private int[] runs = new int[16];
    private int count;

    private StableOrder(long[] times, int size) {
        this.times = times;
        order = new int[size];
        spare = new int[size];
        for (int i = 0; i < size; i++) {
            order[i] = i;
        }
    }

    public static int[] of(long[] times, int size) {
        StableOrder sorting = new StableOrder(times, size);
        sorting.findRuns();
        while (sorting.count > 1) {
            sorting.mergePairs();
        }
        return sorting.order;
    }

    private void findRuns() {
        int size = order.length;
        int at = 0;
        while (at < size) {
            int start = at++;
            while (at < size && times[at] < times[at - 1]) {
                at++;
            }
            if (at - start > 1) {
                reverse(start, at - 1);
            } else {
                while (at < size && times[at] >= times[at - 1]) {
                    at++;
                }
            }
            addRun(start);
        }
        addRun(size);
        count--;
    }

    private void addRun(int start) {
        if (count == runs.length) {
            runs = Arrays.copyOf(runs, count * 2);
        }
        runs[count++] = start;
    }

    private void reverse(int from, int to) {
        for (int i = from, j = to; i < j; i++, j--) {
            int swap = order[i];
            order[i] = order[j];
            order[j] = swap;
        }
    }

    private void mergePairs() {
        int merged = 0;
        for (int i = 0; i < count; i += 2) {
            int high = runs[Math.min(i + 2, count)];
            merge(runs[i], runs[i + 1], high);
            runs[merged++] = runs[i];
        }
        runs[merged] = order.length;
        count = merged;
        int[] swap = order;
        order = spare;
        spare = swap;
    }

    private void merge(int low, int middle, int high) {
        int left = low;
        int right = middle;
        int into = low;
        while (left < middle && right < high) {
            boolean takeLeft = times[order[left]] <= times[order[right]];
            spare[into++] = order[takeLeft ? left++ : right++];
        }
        System.arraycopy(order, left, spare, into, middle - left);
        System.arraycopy(order, right, spare, into + middle - left, high - right);
    }
}
