package undercroft.wording;

import undercroft.calc.spell.WarmestWeek;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.CauseFigure;
import undercroft.outlook.lot.LotOutlook;

/** What is said of the pressure in a lot's bottles beside its figures. */
record PressureWords(ShelfWords words) {
    /** A sentence about the warmest week of a lot's place: heat limit, working pressure, temperature and place. */
    String inWarmestWeek(String key, BatchOutlook batch, Cause cause) {
        LotOutlook lot = batch.lot(cause.lotId().orElseThrow());
        String celsius = words.format().wholeCelsius(cause.figure(CauseFigure.WARMEST_WEEK_CELSIUS));
        boolean assumed = lot.pressure().chance().yearSource() == WarmestWeek.Source.ASSUMED;
        return words.of(
                key,
                words.format().heatLimit(cause.figure(CauseFigure.HEAT_LIMIT_CELSIUS)),
                words.format().barLimit(cause.figure(CauseFigure.WORKING_PRESSURE_GAUGE_BAR)),
                assumed ? words.of("pressure.warmest-assumed", celsius) : celsius,
                lot.place().name());
    }
}
