package undercroft.cellar;

import java.time.Instant;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Check;

/** Something a person found out about a batch in its bottles. */
public sealed interface Reading {
    Instant at();

    /** Which bottle, with what and by whom, as far as it was told. */
    Origin origin();

    /** The pressure on a bottle with a gauge. The gauge is the instrument and has a name; its errors are shared. */
    record Gauge(Instant at, String lotId, double gaugeBar, Origin origin) implements Reading {
        public Gauge {
            Check.id("lot", lotId);
            Check.text("instrument", origin.instrument());
            Check.within("gaugeBar", gaugeBar, -0.5, 16, "bar");
        }

        /** A reading that names no bottle. */
        public Gauge(Instant at, String lotId, String gauge, double gaugeBar) {
            this(at, lotId, gaugeBar, Origin.instrument(gauge));
        }

        /** The name of the gauge. */
        public String gauge() {
            return origin.instrument();
        }

        /** The bottle read. Where none was named the gauge stands for it, since a gauge mostly stays on its bottle. */
        public String bottle() {
            return origin.bottle().isEmpty() ? gauge() : origin.bottle();
        }
    }

    /** A plastic test bottle squeezed. */
    record Squeeze(Instant at, String lotId, BottleFeel feel, Origin origin) implements Reading {
        public Squeeze {
            Check.id("lot", lotId);
        }

        public Squeeze(Instant at, String lotId, BottleFeel feel) {
            this(at, lotId, feel, Origin.UNTOLD);
        }
    }

    /** A bottle opened and judged. */
    record Opened(Instant at, String lotId, PerceivedCarbonation perceivedCarbonation, Origin origin)
            implements Reading {
        public Opened {
            Check.id("lot", lotId);
        }

        public Opened(Instant at, String lotId, PerceivedCarbonation perceivedCarbonation) {
            this(at, lotId, perceivedCarbonation, Origin.UNTOLD);
        }
    }

    /** Specific gravity of a bottle, degassed. */
    record Density(Instant at, double specificGravity, Origin origin) implements Reading {
        public Density {
            Check.within("specificGravity", specificGravity, 0.980, 1.200, "");
        }

        public Density(Instant at, double specificGravity) {
            this(at, specificGravity, Origin.UNTOLD);
        }
    }
}
