package undercroft.outlook.lot;

import java.time.Instant;
import java.util.List;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;

/**
 * Everything known of a capped lot at an instant, and what is to be expected.
 *
 * @param at the instant
 * @param frost what cold has done to it
 * @param stuck why it may never carbonate as planned
 * @param evidence what was seen of its batch
 * @param exposures what the spells of its places did to its bottles, by places in order of stay, then by time
 */
public record LotOutlook(
        Lot lot,
        Instant at,
        int left,
        Place place,
        CarbonationOutlook carbonation,
        PressureOutlook pressure,
        LightOutlook light,
        AgeingOutlook ageing,
        TemperatureOutlook temperature,
        ReadyOutlook ready,
        Progress progress,
        FrostOutlook frost,
        StuckOutlook stuck,
        Evidence evidence,
        List<SpellExposure> exposures) {
    public LotOutlook {
        exposures = List.copyOf(exposures);
    }

    /** How the yeast is doing where the lot stands. */
    public enum Progress {
        WORKING,
        SLOW,
        STALLED,
        TOO_HOT,
        DONE
    }

    /** How far this lot has come: parts of a batch may stand in different places. */
    public Stage stage() {
        if (left == 0) {
            return Stage.EMPTY;
        }
        if (!carbonation.isDone() || stuck.isStuck()) {
            return Stage.CARBONATING;
        }
        if (ready.probabilityNow() < 0.5) {
            return Stage.CLEARING;
        }
        return ageing.isPastBestBefore() ? Stage.PAST_BEST_BEFORE : Stage.READY;
    }

    public String id() {
        return lot.id();
    }

    /** What is to be done first with its bottles where they may burst. */
    public Handling handling() {
        return Handling.of(this);
    }

    /** What is to be said of it, and how loudly. */
    public Verdict verdict() {
        return LotVerdict.of(this);
    }
}
