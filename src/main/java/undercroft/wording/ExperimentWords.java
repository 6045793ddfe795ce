package undercroft.wording;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import undercroft.calc.conditioning.GaugeFit;
import undercroft.cellar.Reading;
import undercroft.outlook.lot.GaugeExperiment;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;

/** What a gauge experiment says, a sentence each. */
public record ExperimentWords(QuantityFormat format) {
    private static final double HOURS_PER_DAY = 24;

    public List<String> lines(GaugeExperiment experiment) {
        GaugeFit fit = experiment.fit();
        List<String> lines = new ArrayList<>();
        int readings = experiment.readings().size();
        lines.add(format.of("experiment.readings", readings, format.number(days(experiment), 1)));
        lines.add(format.of(
                "experiment.rate",
                range(fit.after().gramsPerLitreDay(), 2),
                range(fit.before().gramsPerLitreDay(), 2)));
        lines.add(format.of(
                "experiment.lag",
                range(fit.after().lagDays(), 1),
                range(fit.before().lagDays(), 1)));
        lines.add(format.of("experiment.gas", volumes(fit.after()), volumes(fit.before())));
        lines.add(format.of("experiment.missed", format.bar(fit.forecastMissedBar()), format.bar(fit.fitMissesBar())));
        if (!fit.isSound()) {
            lines.add(format.of("experiment.unsound"));
        }
        experiment.taste().ifPresent(taste -> lines.add(format.of("experiment.taste", taste.perceivedCarbonation())));
        return lines;
    }

    /** One reading beside what was expected and what is believed. */
    public String point(GaugeExperiment experiment, GaugeFit.Point point) {
        double hours = (point.epochSecond()
                        - experiment.batch().cappedAt().orElseThrow().getEpochSecond())
                / 3600.0;
        return format.of(
                "experiment.point",
                format.number(hours / HOURS_PER_DAY, 1),
                format.bar(point.bar()),
                format.bar(point.forecast().median()),
                signed(point.residualToForecast()),
                signed(point.residualToFit()));
    }

    private static double days(GaugeExperiment experiment) {
        List<Reading.Gauge> readings = experiment.readings();
        return Duration.between(
                                experiment.batch().cappedAt().orElseThrow(),
                                readings.get(readings.size() - 1).at())
                        .toMinutes()
                / 60.0
                / HOURS_PER_DAY;
    }

    private String volumes(GaugeFit.Constants constants) {
        return range(constants.finalGramsPerLitre().times(1 / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME), 2);
    }

    private String range(Interval range, int decimals) {
        return format.of(
                "experiment.range",
                format.number(range.median(), decimals),
                format.number(range.low(), decimals),
                format.number(range.high(), decimals));
    }

    private String signed(double bar) {
        return (bar < 0 ? "−" : "+") + format.bar(Math.abs(bar));
    }
}
