package undercroft.calc.conditioning;

import java.util.List;

/**
 * Where a member keeps the deviates of what was read with: one for each gauge bottle, instrument, taster and squeezing hand,
 * after the member's own. Readings that share one are not independent.
 */
record Offsets(int bottles, int instruments, int tasters, int hands) {
    static final Offsets NONE = new Offsets(0, 0, 0, 0);

    static Offsets of(List<LotReadings> lots) {
        int bottles = 0;
        int instruments = 0;
        int tasters = 0;
        int hands = 0;
        for (LotReadings lot : lots) {
            for (Observation reading : lot.readings()) {
                if (reading instanceof Observation.GaugePressure gauge) {
                    bottles = Math.max(bottles, gauge.bottle() + 1);
                    instruments = Math.max(instruments, gauge.instrument() + 1);
                } else if (reading instanceof Observation.Opened opened) {
                    tasters = Math.max(tasters, opened.taster() + 1);
                } else if (reading instanceof Observation.Squeeze squeeze) {
                    hands = Math.max(hands, squeeze.hand() + 1);
                }
            }
        }
        return new Offsets(bottles, instruments, tasters, hands);
    }

    /** How many deviates a member has in all. */
    int dimensions() {
        return EnsembleParameters.DIMENSIONS + bottles + instruments + tasters + hands;
    }

    int bottle(int number) {
        return EnsembleParameters.DIMENSIONS + number;
    }

    int instrument(int number) {
        return EnsembleParameters.DIMENSIONS + bottles + number;
    }

    int taster(int number) {
        return EnsembleParameters.DIMENSIONS + bottles + instruments + number;
    }

    int hand(int number) {
        return EnsembleParameters.DIMENSIONS + bottles + instruments + tasters + number;
    }

    /** Copies what {@code known} has too from one member's deviates to the same member's under this numbering. */
    void copyKnown(Offsets known, double[] from, double[] to) {
        for (int i = 0; i < Math.min(bottles, known.bottles); i++) {
            to[bottle(i)] = from[known.bottle(i)];
        }
        for (int i = 0; i < Math.min(instruments, known.instruments); i++) {
            to[instrument(i)] = from[known.instrument(i)];
        }
        for (int i = 0; i < Math.min(tasters, known.tasters); i++) {
            to[taster(i)] = from[known.taster(i)];
        }
        for (int i = 0; i < Math.min(hands, known.hands); i++) {
            to[hand(i)] = from[known.hand(i)];
        }
    }
}
