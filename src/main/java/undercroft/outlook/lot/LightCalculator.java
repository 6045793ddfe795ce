package undercroft.outlook.lot;

import java.time.Instant;
import java.time.ZoneId;
import undercroft.calc.light.BeerSensitivity;
import undercroft.calc.light.LightExposure;
import undercroft.calc.light.LightHours;
import undercroft.calc.light.LightStay;
import undercroft.calc.light.Wall;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Cover;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Stay;
import undercroft.series.TimeSeries;

/** The light that a lot has had over all its stays. */
final class LightCalculator {
    private static final long DAY = 86_400;

    private LightCalculator() {}

    static LightOutlook of(Cellar cellar, Batch batch, Lot lot, BottleType type, Instant at) {
        Beer beer = batch.beer();
        double sensitivity = BeerSensitivity.factor(beer.bitternessIbu(), beer.reducedHopShare(), beer.colourEbc());
        Wall wall = new Wall(lot.colour(), type.wallMillimetres());
        LightExposure exposure = LightExposure.none(wall, sensitivity);
        TimeSeries.Builder trajectory = new TimeSeries.Builder();
        long now = at.getEpochSecond();
        long last = Long.MIN_VALUE;
        for (int s = 0; s < lot.stays().size(); s++) {
            Stay stay = lot.stays().get(s);
            long until = s + 1 < lot.stays().size()
                    ? Math.min(now, lot.stays().get(s + 1).from().getEpochSecond())
                    : now;
            LightSetting light = cellar.place(stay.placeId()).light();
            for (long from = stay.from().getEpochSecond(); from < until; from += DAY) {
                if (from > last) {
                    trajectory.add(from, exposure.bestDose());
                    last = from;
                }
                exposure =
                        exposure.plus(stretch(light, stay.cover(), from, Math.min(until, from + DAY), cellar.zone()));
            }
        }
        if (now > last) {
            trajectory.add(now, exposure.bestDose());
        }
        Stay present = lot.stayAt(at);
        LightExposure nextDay = LightExposure.none(wall, sensitivity)
                .plus(stretch(cellar.place(present.placeId()).light(), present.cover(), now, now + DAY, cellar.zone()));
        double perDay = nextDay.bestDose();
        return new LightOutlook(exposure.dose(), perDay, trajectory.build());
    }

    private static LightStay stretch(LightSetting light, Cover cover, long from, long until, ZoneId zone) {
        return LightStay.between(
                light.kind().source(), light.lux(), light.measured(), hours(light), from, until, zone, cover);
    }

    private static LightHours hours(LightSetting light) {
        return light.lit()
                .map(lit -> LightHours.between(
                        lit.from(),
                        lit.until(),
                        light.hoursPerDay(),
                        light.kind().source()))
                .orElseGet(() -> LightHours.usual(light.kind(), light.hoursPerDay()));
    }
}
