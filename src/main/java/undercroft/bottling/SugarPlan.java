package undercroft.bottling;

import java.util.ArrayList;
import java.util.List;
import undercroft.calc.priming.Dosing;
import undercroft.calc.priming.OunceRule;
import undercroft.calc.priming.PrimingDose;
import undercroft.calc.priming.PrimingYield;
import undercroft.calc.priming.SugarAddition;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.quantity.Phrase;

/**
 * The priming sugar of the day.
 *
 * @param dose for all the beer that goes to bottles
 * @param weighGrams what to put on the scale: the whole dose as syrup, or what the filled bottles need one by one
 * @param perBottle for each kind of bottle that is filled
 * @param strongestShare sugar in the best served of the filled bottles over the mean
 */
public record SugarPlan(
        PrimingDose dose, Dosing dosing, double weighGrams, List<PerBottle> perBottle, double strongestShare) {
    /** Minutes the syrup boils (common practice, no source: 5 to 10). */
    public static final int BOIL_MINUTES = 10;

    /** Syrup goes to the beer below this, °C (common practice, no source). */
    public static final double COOL_BELOW_CELSIUS = 30;

    private static final double WORTH_SAYING = 0.12;

    /** Sugar for one bottle of a kind: 5 %, mean and 95 % of bottles. */
    public record PerBottle(BottleType bottle, Interval grams) {}

    public SugarPlan {
        perBottle = List.copyOf(perBottle);
    }

    static SugarPlan of(BottlingPlan plan, FillOrder order) {
        PrimingDose dose = PrimingDose.forTarget(
                plan.sugar(),
                order.bottleLitres(),
                plan.beer().warmestCelsius(),
                Carbonation.ofVolumes(plan.filling().wish().targetVolumes()),
                plan.atmosphereBar());
        Dosing dosing = plan.dosing();
        List<PerBottle> perBottle = new ArrayList<>();
        for (FillRow row : order.rows()) {
            if (row.filled() > 0) {
                double fillLitres = row.bottle().fillMillilitres() / 1000;
                perBottle.add(new PerBottle(row.bottle(), dosing.gramsPerBottle(dose.gramsPerLitre(), fillLitres)));
            }
        }
        double weigh = dosing == Dosing.SYRUP ? dose.grams().median() : dose.gramsPerLitre() * order.filledLitres();
        return new SugarPlan(dose, dosing, weigh, perBottle, dosing.strongestOf(Math.max(1, order.filled())));
    }

    /** Corn sugar by the trade's rule of an ounce to the US gallon, for the same beer. */
    public double ounceRuleGrams() {
        return OunceRule.grams(dose.beerLitres());
    }

    /** The gas the dose adds, volumes, with the spread of the product and of how far it ferments. */
    public Interval addedVolumes() {
        SugarAddition weighed = new SugarAddition(dose.sugar(), dose.grams().median());
        return PrimingYield.of(List.of(weighed), dose.beerLitres()).expectedVolumes();
    }

    /** What should be said about the sugar. */
    public List<Phrase> notes() {
        if (dose.notNeeded()) {
            return List.of(Phrase.of("bottling.note.no-sugar"));
        }
        List<Phrase> notes = new ArrayList<>();
        if (!dose.sugar().advice().isEmpty()) {
            notes.add(Phrase.of(
                    "bottling.note.advice", dose.sugar(), Phrase.of(dose.sugar().advice())));
        }
        Interval yield = dose.sugar().yield();
        double width = yield.width() / 2 / yield.median();
        if (width >= WORTH_SAYING) {
            notes.add(Phrase.of(
                    "bottling.note.uncertain",
                    (long) Math.ceil(100 * width),
                    dose.sugar().basis()));
        }
        notes.add(Phrase.of("bottling.note.uneven", (long) Math.ceil(100 * (strongestShare - 1))));
        return notes;
    }
}
