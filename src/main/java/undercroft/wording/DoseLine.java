package undercroft.wording;

import java.util.ArrayList;
import java.util.List;
import undercroft.calc.priming.OunceRule;
import undercroft.calc.priming.PrimingDose;

/** A figure of the priming dose in words, as window, worksheet and command line all show it. */
public record DoseLine(String label, String value) {

    /** All figures of a dose, rounded for a person. */
    public static List<DoseLine> of(PrimingDose dose, QuantityFormat words) {
        List<DoseLine> lines = new ArrayList<>();
        lines.add(line(words, "dose.sugar", words.messages().name(dose.sugar())));
        lines.add(line(words, "dose.weigh", words.weighed(dose.grams().median())));
        lines.add(line(words, "dose.rate", words.gramsPerLitre(dose.gramsPerLitre())));
        lines.add(line(words, "dose.residual", words.fineVolumes(dose.residualVolumes())));
        lines.add(line(words, "dose.added", words.fineVolumes(dose.addedVolumes())));
        lines.add(line(words, "dose.total", words.volumesAbout(dose.totalVolumes())));
        if (!dose.notNeeded()) {
            lines.add(line(words, "dose.water", words.litres(dose.syrupWaterMillilitres() / 1000)));
        }
        String rule = words.of(
                "dose.rule.value",
                words.weighed(OunceRule.grams(dose.beerLitres())),
                words.volumes(OunceRule.expectedVolumes()));
        lines.add(line(words, "dose.rule", rule));
        return lines;
    }

    private static DoseLine line(QuantityFormat words, String key, String value) {
        return new DoseLine(words.of(key), value);
    }
}
