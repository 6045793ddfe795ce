package undercroft.cellar;

import java.time.Instant;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Check;

/** Something a person found out about a batch in its bottles. */
public sealed interface Reading {
    Instant at();

    /** The pressure on a bottle with a gauge; {@code gauge} names the bottle, so that its own errors are shared. */
    record Gauge(Instant at, String lotId, String gauge, double barGauge) implements Reading {
        public Gauge {
            Check.id("lot", lotId);
            gauge = Check.text("gauge", gauge);
            Check.within("barGauge", barGauge, -0.5, 16, "bar");
        }
    }

    /** A plastic test bottle squeezed. */
    record Squeeze(Instant at, String lotId, BottleFeel feel) implements Reading {
        public Squeeze {
            Check.id("lot", lotId);
        }
    }

    /** A bottle opened and judged. */
    record Opened(Instant at, String lotId, PerceivedCarbonation perceivedCarbonation) implements Reading {
        public Opened {
            Check.id("lot", lotId);
        }
    }

    /** Specific gravity of a bottle, degassed. */
    record Density(Instant at, double specificGravity) implements Reading {
        public Density {
            Check.within("specificGravity", specificGravity, 0.980, 1.200, "");
        }
    }
}
