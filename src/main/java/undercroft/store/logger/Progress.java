package undercroft.store.logger;

/** Who waits for a long reading: is told how far it is, and may call it off. */
public interface Progress {
    Progress NONE = fraction -> false;

    /**
     * Called now and then from the reading thread.
     *
     * @param fraction done so far, 0 to 1
     * @return true to stop; the reading then ends with {@link java.util.concurrent.CancellationException}
     */
    boolean isCancelledAt(double fraction);
}
