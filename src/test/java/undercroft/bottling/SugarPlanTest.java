package undercroft.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.bottling.Days.day;
import static undercroft.bottling.Days.plan;
import static undercroft.bottling.Days.stock;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.calc.priming.PrimingDose;
import undercroft.catalogue.Sugars;
import undercroft.cellar.BottleStock;
import undercroft.cellar.FillingPlan;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Mass;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;
import undercroft.wording.DoseLine;
import undercroft.wording.English;

class SugarPlanTest {
    private static final BottleStock HALF_LITRES = stock("returnable-500", 60);

    private static SugarPlan sugar(double target, String kind) {
        return day(plan(target, kind, HALF_LITRES)).sugar();
    }

    /**
     * By hand. Residual at 20 °C: the published table of residual carbonation gives 0.86 volumes of water (Weiss 1974: 0.846)
     * and beer holds 0.97 of it, 0.821 vol. Wanted 2.4 vol in 19 L: (2.4 − 0.821) × 1.9768 g/L × 19 L = 59.31 g of CO2.
     * Sucrose gives 4 × 44.009 / 342.297 = 0.514 g/g, of which 0.95 is reached: 59.31 / (0.513 × 0.95) = 121.7 g, 4.29 oz,
     * 3.20 g for half a litre. (Atomic weights: IUPAC.)
     */
    @Test
    void tableSugarForAPaleAleFollowsTheHandCalculation() {
        SugarPlan sugar = sugar(2.4, "sucrose");
        assertEquals(121.7, sugar.weighGrams(), 0.5);
        assertEquals(4.29, Mass.ofGrams(sugar.weighGrams()).ounces(), 0.02);
        assertEquals(3.20, sugar.perBottle().get(0).grams().median(), 0.015);
        assertEquals(2.4, sugar.dose().totalVolumes().median(), 1e-9);
    }

    /** An ounce of corn sugar to the US gallon: 28.35 g × 5.02 gal in 19 L = 142 g (common practice, no source). */
    @Test
    void theRuleOfAnOunceToTheGallonLiesNearTheDoseForAPaleAle() {
        SugarPlan sugar = sugar(2.4, "dextrose");
        assertEquals(142.3, sugar.ounceRuleGrams(), 0.1);
        assertEquals(1, sugar.weighGrams() / sugar.ounceRuleGrams(), 0.05);
    }

    /** A little less table sugar than corn sugar for the same fizz (common practice): 0.444 / 0.514 = 0.86. */
    @Test
    void tableSugarIsALittleLessThanCornSugar() {
        double ratio =
                sugar(2.4, "sucrose").weighGrams() / sugar(2.4, "dextrose").weighGrams();
        assertEquals(0.865, ratio, 0.005);
    }

    @Test
    void halfABatchNeedsHalfTheSugar() {
        FillingPlan whole = plan(2.4, "sucrose", HALF_LITRES);
        double all =
                day(whole.withShares(new FillingPlan.Shares(20, 0, 0))).sugar().weighGrams();
        double half =
                day(whole.withShares(new FillingPlan.Shares(10, 0, 0))).sugar().weighGrams();
        assertEquals(all / 2, half, 1e-9);
    }

    /** Half of five US gallons: a five-minute boil in about a cup, 237 mL, of water (common practice, no source). */
    @Test
    void halfABatchesSyrupTakesAboutACupOfWater() {
        double litres = Volume.ofUsGallons(2.5).litres();
        SugarPlan sugar = day(plan(2.4, "dextrose", HALF_LITRES).withShares(new FillingPlan.Shares(litres, 0, 0)))
                .sugar();
        assertEquals(237, sugar.dose().syrupWaterMillilitres(), 80);
        assertTrue(SugarPlan.BOIL_MINUTES >= 5);
    }

    /** 5 US gal are 18.927 L by definition of the units: what a scale shows has to agree. */
    @Test
    void theUsAndTheMetricPlanOfOneBeerAgreeWithinRounding() {
        FillingPlan metric = plan(2.4, "sucrose", HALF_LITRES).withShares(new FillingPlan.Shares(18.927, 0, 0));
        FillingPlan us =
                metric.withShares(new FillingPlan.Shares(Volume.parse("5gal").litres(), 0, 0));
        double grams = day(metric).sugar().weighGrams();
        double ounces = Mass.ofGrams(day(us).sugar().weighGrams()).ounces();
        assertEquals(grams, Mass.ofOunces(ounces).grams(), 0.05);
        String weighed = English.in(UnitSystem.METRIC).weighed(grams);
        assertTrue(DoseLine.of(day(metric).sugar().dose(), English.in(UnitSystem.METRIC))
                .contains(new DoseLine("To weigh", weighed)));
        assertTrue(DoseLine.of(day(us).sugar().dose(), English.in(UnitSystem.US))
                .contains(new DoseLine("To weigh", weighed)));
    }

    /** EU 2001/110 lets honey hold 45 to 80 % of fermentable sugars: ± 16 % in yield alone about the middle. */
    @Test
    void honeyShowsAWideSpanAndSaysWhy() {
        SugarPlan sugar = sugar(2.4, "honey");
        double added = sugar.addedVolumes().median();
        assertTrue(sugar.addedVolumes().high() >= 1.12 * added);
        assertTrue(sugar.addedVolumes().low() <= 0.88 * added);
        assertTrue(sugar.notes().stream()
                .map(English::of)
                .anyMatch(note -> note.contains("uncertain") && note.contains("2001/110")));
    }

    @Test
    void aTargetBelowTheResidualNeedsNoSugarAndSaysSo() {
        SugarPlan sugar = sugar(0.5, "sucrose");
        assertEquals(0, sugar.weighGrams());
        assertTrue(English.of(sugar.notes().get(0)).contains("add no sugar"));
        assertEquals(0, sugar.addedVolumes().high());
        assertTrue(Steps.of(day(plan(0.5, "sucrose", HALF_LITRES))).stream()
                .noneMatch(step -> step.id().equals("boil")));
    }

    @Test
    void bottlesDosedOneByOneAreWeighedForWhatIsFilled() {
        FillingPlan spoon = plan(2.4, "sucrose", stock("returnable-500", 10))
                .withWish(new FillingPlan.Wish(2.4, OptionalDouble.empty(), "sucrose", true));
        SugarPlan sugar = day(spoon).sugar();
        assertEquals(10 * sugar.perBottle().get(0).grams().median(), sugar.weighGrams(), 1e-9);
        assertTrue(sugar.perBottle().get(0).grams().width()
                > sugar(2.4, "sucrose").perBottle().get(0).grams().width());
    }

    /** The command line asks {@link PrimingDose} itself: same input, same figures to the last digit shown. */
    @Test
    void theDayShowsTheVeryFiguresOfTheDoseAlone() {
        PrimingDose alone =
                PrimingDose.forTarget(Sugars.STANDARD.get(4), 19, 20, Carbonation.ofVolumes(2.4), Days.SEA_LEVEL_BAR);
        for (UnitSystem units : UnitSystem.values()) {
            assertEquals(
                    DoseLine.of(alone, English.in(units)),
                    DoseLine.of(sugar(2.4, "honey").dose(), English.in(units)));
        }
    }

    @Test
    void theKegsSugarFollowsItsOwnTarget() {
        FillingPlan filling = plan(2.4, "sucrose", HALF_LITRES)
                .withShares(new FillingPlan.Shares(20, 1, 9.5))
                .withWish(new FillingPlan.Wish(2.4, OptionalDouble.of(1.8), "sucrose", false));
        BottlingDay day = day(filling);
        PrimingDose alone =
                PrimingDose.forTarget(Sugars.STANDARD.get(2), 9.5, 20, Carbonation.ofVolumes(1.8), Days.SEA_LEVEL_BAR);
        assertEquals(alone, day.keg().orElseThrow().dose());
        assertEquals(
                List.of("keg"),
                Steps.of(day).stream().map(Step::id).filter("keg"::equals).toList());
    }

    /**
     * The draught trade's chart as the published quadratic fit of Hall (coefficients from memory), psi at °F and volumes:
     * −16.6999 − 0.0101059 T + 0.00116512 T² + 0.173354 T V + 4.24267 V − 0.0684226 V². Pale ale at 11 °C (51.8 °F) for 2.5
     * volumes: 18.5 psi, 1.28 bar. Charts keep no spread; 0.1 bar is what they differ by.
     */
    @Test
    void theKegsPressureLiesNearTheDraughtChart() {
        FillingPlan filling = plan(2.5, "sucrose", HALF_LITRES).withShares(new FillingPlan.Shares(20, 1, 9.5));
        assertEquals(1.28, day(filling).keg().orElseThrow().gaugeBar(), 0.1);
    }
}
