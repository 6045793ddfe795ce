package undercroft.cellar;

import java.util.Optional;
import undercroft.catalogue.LightPlace;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * The light of a place.
 *
 * @param kind the spectral kind and where the usual figures come from
 * @param lux illuminance on the bottles while it is lit
 * @param hoursPerDay hours of light a day
 * @param measured true when the user measured the illuminance
 * @param lit between which hours of the day, if that was told
 */
public record LightSetting(LightPlace kind, double lux, double hoursPerDay, boolean measured, Optional<LitHours> lit) {
    private static final double MINUTE_HOURS = 1 / 60.0;

    public LightSetting {
        Check.within("lux", lux, 0, 150_000, "lx");
        Check.within("hoursPerDay", hoursPerDay, 0, 24, "h");
        if (lit.isPresent() && hoursPerDay > lit.get().length() + MINUTE_HOURS) {
            throw new InvalidInput("hoursPerDay", "cellar.fault.light-hours");
        }
    }

    /** Light whose hours of the day were not told. */
    public LightSetting(LightPlace kind, double lux, double hoursPerDay, boolean measured) {
        this(kind, lux, hoursPerDay, measured, Optional.empty());
    }

    /** The usual figures of a kind of place. */
    public static LightSetting usual(LightPlace kind) {
        return new LightSetting(kind, kind.lux(), kind.hoursPerDay(), false);
    }

    public boolean isDark() {
        return lux == 0 || hoursPerDay == 0;
    }
}
