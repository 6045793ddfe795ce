package undercroft.calc.priming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Gravity;

class StoichiometryTest {
    /** IUPAC 2021 abridged standard atomic weights. */
    private static final double C = 12.011;

    private static final double H = 1.008;
    private static final double O = 15.999;

    private static double formula(int carbon, int hydrogen, int oxygen) {
        return carbon * C + hydrogen * H + oxygen * O;
    }

    private static final double CARBON_DIOXIDE = formula(1, 0, 2);

    @Test
    void glucoseGivesTwoCarbonDioxides() {
        assertEquals(2 * CARBON_DIOXIDE / formula(6, 12, 6), Stoichiometry.HEXOSE, 1e-12);
        assertEquals(0.4886, Stoichiometry.HEXOSE, 5e-5);
    }

    @Test
    void glucoseMonohydrateCarriesItsWater() {
        assertEquals(2 * CARBON_DIOXIDE / formula(6, 14, 7), Stoichiometry.GLUCOSE_MONOHYDRATE, 1e-12);
        assertEquals(0.4442, Stoichiometry.GLUCOSE_MONOHYDRATE, 5e-5);
    }

    @Test
    void sucroseTakesUpWaterAndGivesFour() {
        assertEquals(4 * CARBON_DIOXIDE / formula(12, 22, 11), Stoichiometry.DISACCHARIDE, 1e-12);
        assertEquals(0.5143, Stoichiometry.DISACCHARIDE, 5e-5);
    }

    /** Nothing is lost: glucose is its CO2 and its ethanol, C2H5OH. */
    @Test
    void carbonDioxideAndEthanolWeighWhatTheSugarWeighed() {
        double ethanolPerGram = 2 * formula(2, 6, 1) / formula(6, 12, 6);
        assertEquals(1, Stoichiometry.HEXOSE + ethanolPerGram, 1e-12);
    }

    /** Balling's factors, brewing textbooks: 2.0665 g extract → 1 g ethanol + 0.9565 g CO2 + 0.11 g yeast. */
    @Test
    void ballingsExtractLosesATwentiethOfGlucoseTheoryToYeast() {
        assertEquals(2.0665, 1 + 0.9565 + 0.11, 1e-12);
        assertEquals(0.4629, Stoichiometry.BALLING_EXTRACT, 5e-5);
        assertEquals(0.947, Stoichiometry.BALLING_EXTRACT / Stoichiometry.HEXOSE, 5e-4);
        assertEquals(0.900, Stoichiometry.BALLING_EXTRACT / Stoichiometry.DISACCHARIDE, 5e-4);
    }

    /** Grams a litre for one volume, theory: glucose 4.046, monohydrate 4.451, sucrose 3.844 (1.9768 g/L a volume). */
    @Test
    void oneVolumeTakesAboutFourGramsALitre() {
        double volume = Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
        assertEquals(4.046, volume / Stoichiometry.HEXOSE, 1e-3);
        assertEquals(4.451, volume / Stoichiometry.GLUCOSE_MONOHYDRATE, 1e-3);
        assertEquals(3.844, volume / Stoichiometry.DISACCHARIDE, 1e-3);
    }

    /** "Table sugar a little less than corn sugar" (common practice, no source): 0.864 by stoichiometry. */
    @Test
    void tableSugarNeedsALittleLessThanCornSugar() {
        assertEquals(0.864, Stoichiometry.GLUCOSE_MONOHYDRATE / Stoichiometry.DISACCHARIDE, 5e-4);
        Sugar corn = Listed.find(Sugars.STANDARD, "dextrose", "sugar");
        Sugar table = Listed.find(Sugars.STANDARD, "sucrose", "sugar");
        assertEquals(0.864, corn.yield().median() / table.yield().median(), 0.003);
    }

    /** The catalogue's pure sugars lie within their composition limits under the theory of the pure substance. */
    @ParameterizedTest
    @CsvSource({"dextrose-anhydrous, 0.48857, 0.98", "sucrose, 0.51429, 0.995"})
    void listedSugarsStayBelowTheoryByTheirImpurity(String id, double theory, double purity) {
        Sugar sugar = Listed.find(Sugars.STANDARD, id, "sugar");
        assertTrue(sugar.yield().high() <= theory + 5e-4);
        assertTrue(sugar.yield().low() >= theory * purity - 1e-3);
    }

    /** 1 oz in a US gallon is 7.489 g/L: 1.68 volumes by theory, 1.60 at 95 % (rule: common practice, no source). */
    @Test
    void theOunceRuleIsAboutOnePointSixVolumes() {
        assertEquals(7.489, OunceRule.GRAMS_PER_LITRE, 1e-3);
        assertEquals(1.68, OunceRule.potentialVolumes(), 5e-3);
        assertEquals(1.60, OunceRule.expectedVolumes(), 5e-3);
        assertEquals(5 * 28.349523125, OunceRule.grams(5 * 3.785411784), 1e-9);
    }

    /**
     * One hydrometer point at 1.008 to 1.020: °P apparent by the ASBC cubic, × 0.8192 to real extract (Balling's relation),
     * × Balling's 0.4629 or maltose theory 0.5143. Both ends of the figure used per point.
     */
    @ParameterizedTest
    @CsvSource({"1.008", "1.012", "1.020"})
    void aGravityPointIsAboutAGramOfCarbonDioxideALitre(double specific) {
        double apparent = (Gravity.ofSpecific(specific + 0.0005).plato()
                        - Gravity.ofSpecific(specific - 0.0005).plato())
                * specific
                * 10;
        double real = 0.8192 * apparent;
        var perPoint = UnfinishedFermentation.gramsPerLitre(1);
        assertEquals(real * Stoichiometry.BALLING_EXTRACT, perPoint.low(), 0.02);
        assertEquals(real * Stoichiometry.DISACCHARIDE, perPoint.high(), 0.02);
        assertEquals(1.0, perPoint.median());
    }
}
