package undercroft.report.experiment;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Packaging;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.Settings;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.GaugeExperiment;
import undercroft.quantity.Interval;
import undercroft.quantity.UnitSystem;
import undercroft.series.TimeSeries;

/** A stranger's experiment as a cellar of one batch, so that it is fitted by the same model and code as one's own. */
public final class ExperimentCellar {
    private static final Instant CAPPED = Instant.parse("2000-01-01T00:00:00Z");
    private static final String ID = "experiment";
    private static final int HOUR = 3600;
    private static final int MOST_BOTTLES = 2;

    private ExperimentCellar() {}

    /** The fit of a file without a fault. */
    public static GaugeExperiment experiment(ExperimentFile file) {
        List<ExperimentFile.Point> readings = file.course(ExperimentEntry.PRESSURE);
        Instant at = when(readings.get(readings.size() - 1).hours()).plusSeconds(1);
        return Outlooks.experiment(cellar(file), Map.of(ID, temperatures(file)), at, ID, Optional.empty());
    }

    private static Instant when(double hours) {
        return CAPPED.plusSeconds(Math.round(hours * HOUR));
    }

    private static Cellar cellar(ExperimentFile file) {
        Sugar sugar = new Sugar(
                ID,
                ID,
                Interval.of(
                        file.number(ExperimentEntry.SUGAR_GAS_LOW),
                        file.number(ExperimentEntry.SUGAR_GAS),
                        file.number(ExperimentEntry.SUGAR_GAS_HIGH)),
                "",
                "");
        BottleType bottle = new BottleType(
                ID,
                ID,
                GlassColour.AMBER,
                file.word(ExperimentEntry.BOTTLE, BottleClass.class),
                Closure.CROWN,
                file.number(ExperimentEntry.FILL),
                file.number(ExperimentEntry.BRIMFUL),
                file.number(ExperimentEntry.WALL),
                200,
                file.number(ExperimentEntry.DIAMETER),
                OptionalDouble.empty());
        return Cellar.empty(ID, ZoneOffset.UTC)
                .withSettings(new Settings(UnitSystem.METRIC, file.number(ExperimentEntry.ALTITUDE)))
                .withOwnSugars(List.of(sugar))
                .withOwnBottles(List.of(bottle))
                .withPlace(new Place(ID, ID, new TemperatureSource.Logged(), 0, LightSetting.usual(LightPlace.DARK)))
                .withBatch(batch(file));
    }

    private static Batch batch(ExperimentFile file) {
        FillingMethod method = file.word(ExperimentEntry.FILLING, FillingMethod.class);
        Lot lot = new Lot(
                        ID,
                        ID,
                        GlassColour.AMBER,
                        MOST_BOTTLES,
                        file.number(ExperimentEntry.FILL),
                        false,
                        List.of(new Stay(ID, CAPPED, Cover.CLOSED_BOX)),
                        List.of())
                .withGauge(new FittedGauge(ID, CAPPED));
        List<Reading> readings = file.course(ExperimentEntry.PRESSURE).stream()
                .map(point -> (Reading) new Reading.Gauge(when(point.hours()), ID, ID, point.value()))
                .toList();
        double grams = file.number(ExperimentEntry.SUGAR);
        Priming priming = new Priming(
                1,
                grams > 0 ? List.of(new SugarDose(ID, grams)) : List.of(),
                OptionalDouble.empty(),
                is(file, ExperimentEntry.SUGAR_PER_BOTTLE));
        Batch batch = new Batch(
                ID,
                ID,
                beer(file),
                new Yeast(
                        file.word(ExperimentEntry.YEAST, YeastStrain.class),
                        file.word(ExperimentEntry.YEAST_STATE, YeastState.class),
                        file.word(ExperimentEntry.FLOCCULATION, Flocculation.class),
                        is(file, ExperimentEntry.FERMENTS_DEXTRINS)),
                priming,
                method,
                Optional.of(CAPPED),
                List.of(lot),
                readings,
                "");
        return batch.withPackaging(
                new Packaging(method, file.optional(ExperimentEntry.BEER_AT_CAPPING), 0, Optional.empty()));
    }

    private static Beer beer(ExperimentFile file) {
        return new Beer(
                BeerStyle.PALE_ALE,
                file.number(ExperimentEntry.STRENGTH),
                25,
                0,
                15,
                file.number(ExperimentEntry.WARMEST),
                file.optional(ExperimentEntry.GRAVITY),
                is(file, ExperimentEntry.GRAVITY_WITH_SUGAR),
                file.optional(ExperimentEntry.FINAL_GRAVITY));
    }

    private static boolean is(ExperimentFile file, ExperimentEntry flag) {
        return file.optional(flag).orElse(0) >= 0.5;
    }

    /** Hour by hour on straight lines between what is told. */
    private static TimeSeries temperatures(ExperimentFile file) {
        List<ExperimentFile.Point> points = file.course(ExperimentEntry.TEMPERATURE);
        List<ExperimentFile.Point> readings = file.course(ExperimentEntry.PRESSURE);
        long last = Math.round(readings.get(readings.size() - 1).hours()) + 1;
        TimeSeries.Builder series = new TimeSeries.Builder();
        int next = 0;
        for (long hour = 0; hour <= last; hour++) {
            while (next < points.size() && points.get(next).hours() < hour) {
                next++;
            }
            ExperimentFile.Point after = points.get(Math.min(next, points.size() - 1));
            ExperimentFile.Point before = points.get(Math.max(0, next - 1));
            double span = after.hours() - before.hours();
            double share = span > 0 ? Math.max(0, Math.min(1, (hour - before.hours()) / span)) : 0;
            series.add(when((double) hour).getEpochSecond(), before.value() + share * (after.value() - before.value()));
        }
        return series.build();
    }
}
