package undercroft.outlook;

import undercroft.cellar.Lot;
import undercroft.cellar.Place;

/** Everything known of a capped lot at an instant, and what is to be expected. */
public record LotOutlook(
        Lot lot,
        int left,
        Place place,
        CarbonationOutlook carbonation,
        PressureOutlook pressure,
        LightOutlook light,
        AgeingOutlook ageing,
        TemperatureOutlook temperature,
        ReadyOutlook ready,
        Progress progress) {
    /** How the yeast is doing where the lot stands. */
    public enum Progress {
        WORKING,
        SLOW,
        STALLED,
        TOO_HOT,
        DONE
    }

    public Alert alert() {
        return pressure.alert().or(light.alert());
    }
}
