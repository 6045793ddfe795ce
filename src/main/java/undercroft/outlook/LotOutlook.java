package undercroft.outlook;

import java.util.List;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;

/**
 * Everything known of a capped lot at an instant, and what is to be expected.
 *
 * @param strains what the spells of its places did to its bottles, by places in order of stay, then by time
 */
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
        Progress progress,
        List<SpellStrain> strains) {
    public LotOutlook {
        strains = List.copyOf(strains);
    }

    /** A lot that no spell touched. */
    public LotOutlook(
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
        this(lot, left, place, carbonation, pressure, light, ageing, temperature, ready, progress, List.of());
    }

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
