package undercroft.outlook;

import java.time.Instant;
import java.util.Optional;
import undercroft.quantity.InvalidInput;

/**
 * Something that keeps a figure from being made, or makes it a guess.
 *
 * @param id of the place, the batch or the file
 * @param since when the log ends, where it does
 * @param fault what is wrong with a batch or a file
 */
public record Problem(Kind kind, String id, Optional<Instant> since, Optional<InvalidInput> fault) {
    /** What is wrong. */
    public enum Kind {
        /** A place whose log is empty: a usual room is taken for it. */
        NO_TEMPERATURES,
        /** A place whose log ended a while ago. */
        LOG_ENDED,
        /** A batch that cannot be calculated. */
        BATCH,
        /** A line or a file of temperatures that could not be read and is left out. */
        LEFT_OUT
    }

    static Problem ofPlace(Kind kind, String placeId, Optional<Instant> since) {
        return new Problem(kind, placeId, since, Optional.empty());
    }

    static Problem ofFile(InvalidInput fault) {
        return new Problem(Kind.LEFT_OUT, fault.where(), Optional.empty(), Optional.of(fault));
    }

    static Problem ofBatch(String batchId, InvalidInput fault) {
        return new Problem(Kind.BATCH, batchId, Optional.empty(), Optional.of(fault));
    }
}
