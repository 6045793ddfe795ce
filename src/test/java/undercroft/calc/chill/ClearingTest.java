package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.catalogue.Flocculation;

class ClearingTest {
    /** Harrison et al., Bioseparations Science and Engineering, chapter 5, problem: yeast 5 µm, 1.10 in 1.02 g/mL, 1.3 cP. */
    @Test
    void aYeastCellSinksThreeMillimetresAnHour() {
        assertEquals(3.02, Clearing.fallMillimetresPerHour(5, 80, 1.3), 0.005);
    }

    @Test
    void powderyYeastTakesLongestToClear() {
        assertTrue(Clearing.hours(Flocculation.FLOCCULENT).high()
                <= Clearing.hours(Flocculation.ORDINARY).median());
        assertTrue(Clearing.hours(Flocculation.ORDINARY).high()
                <= Clearing.hours(Flocculation.POWDERY).low());
    }
}
