package undercroft.cellar;

import undercroft.catalogue.LightPlace;
import undercroft.quantity.Check;

/**
 * The light of a place.
 *
 * @param kind the spectral kind and where the usual figures come from
 * @param lux illuminance on the bottles while it is lit
 * @param hoursPerDay hours of light a day
 * @param measured true when the user measured the illuminance
 */
public record LightSetting(LightPlace kind, double lux, double hoursPerDay, boolean measured) {
    public LightSetting {
        Check.within("lux", lux, 0, 150_000, "lx");
        Check.within("hoursPerDay", hoursPerDay, 0, 24, "h");
    }

    /** The usual figures of a kind of place. */
    public static LightSetting usual(LightPlace kind) {
        return new LightSetting(kind, kind.lux(), kind.hoursPerDay(), false);
    }

    public boolean isDark() {
        return lux == 0 || hoursPerDay == 0;
    }
}
