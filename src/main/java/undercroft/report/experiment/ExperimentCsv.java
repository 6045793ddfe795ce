package undercroft.report.experiment;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.Reading;
import undercroft.cellar.SugarDose;
import undercroft.outlook.lot.GaugeExperiment;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * A gauge experiment as a file that others can read: CSV (RFC 4180, UTF-8), four cells a line, what was known of the beer
 * first, then its temperature every six hours, the gauge, the taste. Anonymous: no name, no place, no note and no date;
 * times are hours since capping, the height above the sea is rounded to a hundred metres.
 */
public final class ExperimentCsv {
    static final String HEAD = "kind,hours,value,unit";
    static final String LINE_END = "\r\n";
    private static final long SIX_HOURS = 6 * 3600;
    private static final double ROUND_METRES = 100;

    private final StringBuilder text = new StringBuilder(HEAD).append(LINE_END);

    private ExperimentCsv() {}

    public static String of(Cellar cellar, GaugeExperiment experiment) {
        ExperimentCsv file = new ExperimentCsv();
        file.beer(cellar, experiment.batch());
        file.bottle(experiment);
        file.course(experiment);
        return file.text.toString();
    }

    private void beer(Cellar cellar, Batch batch) {
        Beer beer = batch.beer();
        number(ExperimentEntry.FORMAT, 1, 0);
        word(ExperimentEntry.YEAST, batch.yeast().strain().id());
        word(ExperimentEntry.YEAST_STATE, batch.yeast().state().id());
        word(ExperimentEntry.FLOCCULATION, batch.yeast().flocculation().id());
        number(ExperimentEntry.FERMENTS_DEXTRINS, batch.yeast().fermentsDextrins() ? 1 : 0, 0);
        number(ExperimentEntry.STRENGTH, beer.abvPercent(), 2);
        number(ExperimentEntry.WARMEST, beer.warmestCelsius(), 1);
        number(ExperimentEntry.GRAVITY, beer.gravityAtBottling(), 4);
        number(ExperimentEntry.GRAVITY_WITH_SUGAR, beer.gravityIncludesPriming() ? 1 : 0, 0);
        number(ExperimentEntry.FINAL_GRAVITY, beer.expectedFinalGravity(), 4);
        word(ExperimentEntry.FILLING, batch.fillingMethod().id());
        number(ExperimentEntry.BEER_AT_CAPPING, batch.packaging().beerCelsiusAtCapping(), 1);
        number(
                ExperimentEntry.ALTITUDE,
                Math.rint(cellar.settings().altitudeMetres() / ROUND_METRES) * ROUND_METRES,
                0);
        number(ExperimentEntry.SUGAR_PER_BOTTLE, batch.priming().perBottle() ? 1 : 0, 0);
        double grams =
                batch.priming().doses().stream().mapToDouble(SugarDose::grams).sum();
        number(ExperimentEntry.SUGAR, grams / batch.priming().beerLitres(), 3);
        Interval gas = gas(cellar, batch.priming().doses(), grams);
        number(ExperimentEntry.SUGAR_GAS_LOW, gas.low(), 4);
        number(ExperimentEntry.SUGAR_GAS, gas.median(), 4);
        number(ExperimentEntry.SUGAR_GAS_HIGH, gas.high(), 4);
    }

    /** Of a gram of the mixture. */
    private static Interval gas(Cellar cellar, List<SugarDose> doses, double grams) {
        return doses.stream()
                .map(dose -> cellar.sugar(dose.sugarId()).yield().times(dose.grams() / grams))
                .reduce(ExperimentCsv::plus)
                .orElse(Interval.exactly(ExperimentEntry.SUGAR_GAS.least()));
    }

    private static Interval plus(Interval one, Interval other) {
        return Interval.of(one.low() + other.low(), one.median() + other.median(), one.high() + other.high());
    }

    private void bottle(GaugeExperiment experiment) {
        word(ExperimentEntry.BOTTLE, experiment.bottle().bottleClass().id());
        number(ExperimentEntry.FILL, experiment.bottle().fillMillilitres(), 1);
        number(ExperimentEntry.BRIMFUL, experiment.bottle().brimfulMillilitres(), 1);
        number(ExperimentEntry.WALL, experiment.bottle().wallMillimetres(), 2);
        number(ExperimentEntry.DIAMETER, experiment.bottle().bodyMillimetres(), 1);
        number(ExperimentEntry.MEASURED_SHARE, experiment.coverage(), 2);
    }

    private void course(GaugeExperiment experiment) {
        Instant capped = experiment.batch().cappedAt().orElseThrow();
        Instant last =
                experiment.readings().get(experiment.readings().size() - 1).at();
        Track bottles = experiment.bottles();
        long end = last.getEpochSecond() + SIX_HOURS;
        for (long at = capped.getEpochSecond(); at < end; at += SIX_HOURS) {
            double hours = (at - capped.getEpochSecond()) / 3600.0;
            line(ExperimentEntry.TEMPERATURE, plain(hours, 0), plain(bottles.valueAt(bottles.indexAt(at)), 2));
        }
        for (Reading.Gauge reading : experiment.readings()) {
            line(ExperimentEntry.PRESSURE, hours(capped, reading.at()), plain(reading.gaugeBar(), 3));
        }
        experiment
                .taste()
                .ifPresent(taste -> line(
                        ExperimentEntry.TASTE,
                        hours(capped, taste.at()),
                        taste.perceivedCarbonation().id()));
    }

    private static String hours(Instant capped, Instant at) {
        return plain(Duration.between(capped, at).toSeconds() / 3600.0, 2);
    }

    private void word(ExperimentEntry entry, String id) {
        line(entry, "", id);
    }

    private void number(ExperimentEntry entry, double value, int decimals) {
        line(entry, "", plain(value, decimals));
    }

    private void number(ExperimentEntry entry, OptionalDouble value, int decimals) {
        if (value.isPresent()) {
            number(entry, value.getAsDouble(), decimals);
        }
    }

    private void line(ExperimentEntry entry, String hours, String value) {
        text.append(String.join(",", entry.kind(), hours, value, entry.unit())).append(LINE_END);
    }

    private static String plain(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
