package undercroft.outlook.serving;

import java.time.Instant;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.CoolingMedium;
import undercroft.series.TimeSeries;

/**
 * How the bottles of a serving get cold.
 *
 * @param lotId the lot they come from
 * @param bottles that go in together
 * @param fromCelsius where they stand until then
 * @param coldCelsius the cold place as it really is
 * @param wantedCelsius in the glass
 * @param bottleCelsius the bottle when it is poured from
 * @param coolingMinutes until they are cold; 0 when they are already
 * @param clearingHours upright in the cold; 0 in ice water or a freezer
 * @param warmingMinutes at the table before pouring
 * @param coldFrom when they are cold, if they go in as planned
 * @param trajectory temperature of the beer up to the serving, °C; empty when there is no time left
 */
public record Chilling(
        String lotId,
        BottleType bottle,
        int bottles,
        CoolingMedium coolingMedium,
        double fromCelsius,
        double coldCelsius,
        double wantedCelsius,
        double bottleCelsius,
        double coolingMinutes,
        double clearingHours,
        double warmingMinutes,
        Instant coldFrom,
        TimeSeries trajectory) {}
