package undercroft.cellar;

import java.time.Instant;
import java.util.Optional;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * A gauge that sits on one bottle of a lot for an experiment: read daily to its plateau, then that bottle is opened and
 * tasted. Its readings are the lot's gauge readings of that name since then.
 *
 * @param instrument the name of the gauge, which stands for its bottle
 * @param from when it was fitted, mostly at capping
 * @param topic a live gauge's messages, if it sends any
 * @param opened when the bottle was opened, which ends the experiment
 */
public record FittedGauge(String instrument, Instant from, Optional<Instant> opened, Optional<PressureTopic> topic) {
    private static final int LONGEST = 120;

    public FittedGauge {
        instrument = Check.text("instrument", instrument);
        if (instrument.length() > LONGEST) {
            throw new InvalidInput("instrument", "fault.too-long", LONGEST);
        }
        if (opened.isPresent() && opened.get().isBefore(from)) {
            throw new InvalidInput("opened", "cellar.fault.opened-early");
        }
    }

    /** One that is read by eye, and on its bottle. */
    public FittedGauge(String instrument, Instant from) {
        this(instrument, from, Optional.empty(), Optional.empty());
    }

    public FittedGauge opened(Instant at) {
        return new FittedGauge(instrument, from, Optional.of(at), topic);
    }

    public FittedGauge hearing(Optional<PressureTopic> heard) {
        return new FittedGauge(instrument, from, opened, heard);
    }

    /** Whether the experiment goes on at an instant. */
    public boolean isReadAt(Instant at) {
        return !from.isAfter(at) && opened.map(at::isBefore).orElse(true);
    }

    /** Whether a reading belongs to the experiment. */
    public boolean isOwn(Reading.Gauge reading, String lotId) {
        return reading.lotId().equals(lotId)
                && reading.bottle().equals(instrument)
                && !reading.at().isBefore(from)
                && opened.map(end -> !reading.at().isAfter(end)).orElse(true);
    }
}
