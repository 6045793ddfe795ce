package undercroft.calc.light;

import java.time.ZoneId;
import java.util.Objects;
import undercroft.catalogue.Cover;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.LightSource;
import undercroft.quantity.Check;

/**
 * A time bottles spent in one light.
 *
 * @param lux illuminance of the place, 0 to 200,000 lx
 * @param luxMeasured true when somebody measured it
 * @param hours hours with this light on, 0 and up
 * @param cover what stood between the light and the bottles
 */
public record LightStay(LightSource source, double lux, boolean luxMeasured, double hours, Cover cover) {
    public LightStay {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(cover, "cover");
        Check.within("lux", lux, 0, 200_000, "lx");
        Check.within("hours", hours, 0, 1_000_000, "h");
    }

    /**
     * A stay by the clock.
     *
     * @param lux illuminance while the place is lit, 0 to 200,000 lx
     * @param fromInclusive epoch second
     * @param untilExclusive epoch second
     * @param zone of the clock that {@code when} is told by
     */
    public static LightStay between(
            LightSource source,
            double lux,
            boolean luxMeasured,
            LightHours when,
            long fromInclusive,
            long untilExclusive,
            ZoneId zone,
            Cover cover) {
        return new LightStay(source, lux, luxMeasured, when.within(fromInclusive, untilExclusive, zone), cover);
    }

    /** A stay of some days at a usual place, with its usual light and hours a day. */
    public static LightStay of(LightPlace place, double days, Cover cover) {
        return new LightStay(place.source(), place.lux(), false, days * place.hoursPerDay(), cover);
    }
}
