package undercroft.calc.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.catalogue.LightSource;

class SpectraTest {
    /** ASTM G173-03 global tilt, W m⁻² nm⁻¹, 480 to 700 nm every 5 nm. */
    private static final double[] SUN_FROM_480 = {
        1.6181, 1.5683, 1.6224, 1.6485, 1.5451, 1.5635, 1.5481, 1.5314, 1.5236, 1.5781, 1.5446, 1.5535, 1.4825, 1.5435,
        1.5399, 1.5634, 1.4740, 1.5201, 1.4816, 1.4777, 1.5020, 1.5324, 1.3709, 1.4308, 1.4753, 1.4895, 1.4686, 1.4697,
        1.4739, 1.4026, 1.3924, 1.4458, 1.4340, 1.4567, 1.3594, 1.3499, 1.3992, 1.4214, 1.4196, 1.3958, 1.3969, 1.3748,
        1.1821, 1.2714, 1.2823
    };

    private static final SpectralTable SOURCES = SpectralTable.read("sources_10nm.csv");

    /** CIE 1924 spectral luminous efficiency, published table values. */
    @ParameterizedTest
    @CsvSource({"555, 1.0000", "505, 0.4073", "450, 0.0380", "400, 0.000396", "560, 0.995", "600, 0.631", "650, 0.107"})
    void theEyeFollowsThePublishedCurve(double nanometres, double efficiency) {
        assertEquals(efficiency, Luminosity.efficiency(nanometres), 1e-9);
    }

    /** The table's 507 nm value is 0.4443 at 1 nm; linear between 505 and 510 nm is off by 0.2 %. */
    @Test
    void betweenTheStepsTheCurveIsLinear() {
        assertEquals(0.4443, Luminosity.efficiency(507), 0.002);
        assertEquals(0, Luminosity.efficiency(300));
        assertEquals(0, Luminosity.efficiency(900));
    }

    /** SI definition of the candela: 1 W/m² at 540 THz, 555 nm in air, is 683 lx. */
    @Test
    void oneWattAt555NanometresIs683Lux() {
        assertEquals(683, Luminosity.lux(nm -> nm == 555 ? 1.0 / 5 : 0), 1e-9);
    }

    /** CIE 015, table of illuminant A. */
    @ParameterizedTest
    @CsvSource({"380, 9.7951", "450, 33.0859", "560, 100", "780, 241.675"})
    void theIncandescentLampIsPlancksLaw(double nanometres, double power) {
        assertEquals(power, Daylight.incandescent(nanometres), 1e-3 * 0.5);
    }

    /** CIE 015, table of D65. */
    @ParameterizedTest
    @CsvSource({
        "300, 0.0341",
        "350, 44.9117",
        "400, 82.7549",
        "450, 117.008",
        "500, 109.354",
        "550, 104.046",
        "560, 100"
    })
    void overcastDaylightHoldsTheTableOfD65(double nanometres, double power) {
        assertEquals(power, SOURCES.column("D65").at(nanometres), 1e-4);
    }

    /** CIE 015: D65 is the D illuminant of 6504 K; 600 and 700 nm from its published table. */
    @Test
    void theDaylightFormulaGivesD65At6504Kelvin() {
        DoubleUnaryOperator formula = Daylight.ofColourTemperature(6504);
        Spectrum table = SOURCES.column("D65");
        for (int nm = 350; nm <= 560; nm += 10) {
            assertEquals(1, formula.applyAsDouble(nm) / table.at(nm), 5e-4);
        }
        assertEquals(90.0062, formula.applyAsDouble(600), 0.045);
        assertEquals(71.6091, formula.applyAsDouble(700), 0.036);
    }

    /** The formula has a branch at 7000 K whose two cubics were fitted to meet there. */
    @Test
    void theDaylightFormulaHasNoStepWhereItsBranchesMeet() {
        double below = Daylight.ofColourTemperature(7_000).applyAsDouble(450);
        double above = Daylight.ofColourTemperature(7_000.001).applyAsDouble(450);
        assertEquals(1, above / below, 1e-3);
    }

    /** Two sums of the same CIE spectra: ours from V(λ), and the one recorded with the table of each source. */
    @Test
    void theIlluminanceOfD65AgreesWithTheRecordedSum() {
        assertEquals(1, Luminosity.lux(Daylight.ofColourTemperature(6504)) / SOURCES.lux("D65"), 2e-4);
    }

    /** Sums recorded with the CIE tables by another program; our V(λ) and our copy of the lamps have to give them again. */
    @ParameterizedTest
    @CsvSource({"FL2, 1.00003e6", "FL11, 1.00002e6"})
    void theIlluminanceOfFluorescentLampsAgreesWithTheRecordedSum(String column, double lux) {
        Spectrum lamp = SpectralTable.read("fluorescent_5nm.csv").column(column);
        assertEquals(1, Luminosity.lux(lamp::at) / lux, 1e-4);
    }

    /** ASTM G173-03 global tilt has 109.5 klx (computed from the standard at 1 nm). */
    @Test
    void theSunOfTheStandardIs109500Lux() {
        Spectrum resource = SOURCES.column("G173");
        Spectrum standard = new Spectrum(480, 5, SUN_FROM_480);
        double lux = Luminosity.lux(nm -> nm < 480 ? resource.at(nm) : standard.at(nm));
        assertEquals(109_500, lux, 0.01 * 109_500);
        assertEquals(109_500, SOURCES.lux("G173"), 0.002 * 109_500);
    }

    /** ASTM G173-03 at 400, 445, 500, 550 nm. The table holds means of 10 nm, so solar lines make it differ by up to 5 %. */
    @ParameterizedTest
    @CsvSource({"400, 1.1141", "445, 1.4619", "500, 1.5451", "550, 1.5399"})
    void theSunsTableFollowsTheStandard(double nanometres, double power) {
        assertEquals(power, SOURCES.column("G173").at(nanometres), 0.05 * power);
    }

    @ParameterizedTest
    @EnumSource(LightSource.class)
    void oneLuxOfEverySourceHasPowerInTheRangeThatHarms(LightSource source) {
        DoubleUnaryOperator perLux = Illumination.perLux(source);
        double watts = 0;
        for (int nm = 350; nm <= 500; nm += 5) {
            assertTrue(perLux.applyAsDouble(nm) >= 0);
            watts += 5 * perLux.applyAsDouble(nm);
        }
        assertTrue(watts > 1e-4 && watts < 5e-3, source + " " + watts);
    }

    @Test
    void aMissingTableIsNamed() {
        IllegalStateException fault =
                assertThrows(IllegalStateException.class, () -> SpectralTable.read("ultraviolet_lamps.csv"));
        assertTrue(fault.getMessage().contains("ultraviolet_lamps.csv"));
    }

    @Test
    void aBrokenTableIsNamedWithItsFault() {
        List<String[]> text = List.of(row("wavelength_nm", "x"), row("300", "1"), row("310", "many"));
        List<String[]> hole = List.of(row("wavelength_nm", "x"), row("300", "1"), row("310", "1"), row("330", "1"));
        List<String[]> shortRow = List.of(row("wavelength_nm", "x"), row("300", "1"), row("310"));
        assertThrows(
                IllegalStateException.class, () -> SpectralTable.of("t", text).column("x"));
        assertThrows(
                IllegalStateException.class, () -> SpectralTable.of("t", hole).column("x"));
        assertThrows(IllegalStateException.class, () -> SpectralTable.of("t", shortRow));
        assertThrows(IllegalStateException.class, () -> SOURCES.column("moonlight"));
    }

    private static String[] row(String... cells) {
        return cells;
    }
}
