package undercroft.bottling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import undercroft.calc.priming.OunceRule;
import undercroft.calc.priming.PrimingDose;
import undercroft.quantity.Interval;
import undercroft.quantity.Mass;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;

/** A figure of the priming dose in words, as window, worksheet and command line all show it. */
public record DoseLine(String label, String value) {

    /** All figures of a dose, rounded for a person. */
    public static List<DoseLine> of(PrimingDose dose, UnitSystem units) {
        List<DoseLine> lines = new ArrayList<>();
        lines.add(new DoseLine("Sugar", dose.sugar().label()));
        lines.add(new DoseLine("To weigh", massText(dose.grams().median())));
        lines.add(new DoseLine(
                "That is",
                units == UnitSystem.US
                        ? fixed(
                                        Mass.ofGrams(dose.gramsPerLitre()).ounces()
                                                * Volume.ofUsGallons(1).litres(),
                                        2) + " oz to the US gallon"
                        : fixed(dose.gramsPerLitre(), 2) + " g/L"));
        lines.add(new DoseLine("Gas in the beer already", fixed(dose.residualVolumes(), 2) + " vol"));
        lines.add(new DoseLine("Gas the sugar adds", fixed(dose.addedVolumes(), 2) + " vol"));
        lines.add(new DoseLine("What it really gives", volumesText(dose.totalVolumes())));
        if (!dose.notNeeded()) {
            lines.add(new DoseLine(
                    "Water for the syrup",
                    Volume.ofMillilitres(dose.syrupWaterMillilitres()).text(units)));
        }
        lines.add(new DoseLine(
                "Check: an ounce of corn sugar to the US gallon",
                massText(OunceRule.grams(dose.beerLitres())) + ", adds about " + fixed(OunceRule.expectedVolumes(), 1)
                        + " vol (common practice)"));
        return lines;
    }

    /** Both units at once, as scales have either: {@code 118.3 g (4.17 oz)}. */
    public static String massText(double grams) {
        return fixed(grams, grams < 10 ? 2 : 1) + " g ("
                + fixed(Mass.ofGrams(grams).ounces(), 2) + " oz)";
    }

    /** The span that nine of ten batches lie in: {@code 2.2 to 2.6, about 2.4 vol}. */
    public static String volumesText(Interval volumes) {
        return fixed(volumes.low(), 2) + " to " + fixed(volumes.high(), 2) + ", about " + fixed(volumes.median(), 2)
                + " vol";
    }

    private static String fixed(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
