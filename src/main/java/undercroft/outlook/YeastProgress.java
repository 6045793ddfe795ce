package undercroft.outlook;

import java.time.Instant;
import undercroft.calc.conditioning.CardinalTemperatures;
import undercroft.catalogue.YeastStrain;
import undercroft.series.Track;

/**
 * How the yeast is doing: stalled when its temperature response over the last 48 hours is under a tenth of that at 21 °C,
 * slow under a third, too hot after half a day above what its kind bears (rules assumed).
 */
final class YeastProgress {
    private static final long TWO_DAYS = 2 * 86_400;
    private static final double REFERENCE_CELSIUS = 21;
    private static final double DONE = 0.95;
    private static final double STALLED = 0.10;
    private static final double SLOW = 0.35;
    private static final int HOT_HOURS = 12;

    private YeastProgress() {}

    static LotOutlook.Progress of(YeastStrain strain, Track bottles, Instant at, CarbonationOutlook carbonation) {
        if (carbonation.fractionDone().median() >= DONE) {
            return LotOutlook.Progress.DONE;
        }
        CardinalTemperatures cardinal =
                new CardinalTemperatures(strain.minimumCelsius(), strain.optimumCelsius(), strain.maximumCelsius());
        int last = bottles.indexAt(at.getEpochSecond());
        int first = bottles.indexAt(at.getEpochSecond() - TWO_DAYS);
        double response = 0;
        int hot = 0;
        for (int i = first; i <= last; i++) {
            response += cardinal.share(bottles.valueAt(i));
            hot += bottles.valueAt(i) > strain.tooHotCelsius() ? 1 : 0;
        }
        response /= (last - first + 1) * cardinal.share(REFERENCE_CELSIUS);
        if (hot * (double) bottles.stepSeconds() > HOT_HOURS * 3600) {
            return LotOutlook.Progress.TOO_HOT;
        }
        if (response < STALLED) {
            return LotOutlook.Progress.STALLED;
        }
        return response < SLOW ? LotOutlook.Progress.SLOW : LotOutlook.Progress.WORKING;
    }
}
