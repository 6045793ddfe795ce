package undercroft.command;

import undercroft.calc.conditioning.GaugeFit;
import undercroft.outlook.lot.GaugeExperiment;
import undercroft.report.Answer;
import undercroft.wording.ExperimentWords;

/** What commands say of a gauge experiment. */
final class Experiments {
    private Experiments() {}

    static Answer said(Answer answer, GaugeExperiment experiment, ExperimentWords words) {
        GaugeFit fit = experiment.fit();
        answer.put("readings", experiment.readings().size())
                .put("sugarGramsPerLitreDay", fit.after().gramsPerLitreDay())
                .put("lagDays", fit.after().lagDays())
                .put("finalGramsPerLitre", fit.after().finalGramsPerLitre())
                .put("sound", fit.isSound())
                .put("forecastMissedBar", fit.forecastMissedBar())
                .put("fitMissesBar", fit.fitMissesBar());
        words.lines(experiment).forEach(answer::line);
        fit.points().forEach(point -> answer.line(words.point(experiment, point)));
        return answer;
    }
}
