package undercroft.plot.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast by the formula of WCAG 2.1 (W3C 2018): relative luminance, success criteria 1.4.3 and 1.4.11. */
class PaletteTest {
    private static final List<Palette> ALL = List.of(Palette.LIGHT, Palette.DARK, Palette.PRINT);
    private static final List<Role> DATA = List.of(Role.CARBONATION, Role.PRESSURE, Role.READY, Role.LIMIT, Role.LIGHT);

    /** Deuteranopia and protanopia: G. M. Machado et al., IEEE TVCG 15 (2009), severity 1.0; from memory. */
    private static final double[][][] VISIONS = {
        {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}},
        {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}
    };

    private static double[] linear(String hex) {
        double[] rgb = new double[3];
        for (int i = 0; i < 3; i++) {
            double part = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            rgb[i] = part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        }
        return rgb;
    }

    private static double luminance(double[] rgb) {
        return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    }

    private static double contrast(String one, String other) {
        double a = luminance(linear(one));
        double b = luminance(linear(other));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Well-known greys either side of the limit on white: #767676 passes at 4.54, #777777 fails at 4.48. */
    @Test
    void theContrastFormulaGivesThePublishedFigures() {
        assertEquals(21, contrast("#000000", "#FFFFFF"), 1e-9);
        assertEquals(4.54, contrast("#767676", "#FFFFFF"), 0.005);
        assertEquals(4.48, contrast("#777777", "#FFFFFF"), 0.005);
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"PAPER", "GRID", "FRAME"})
    void wordsStandOutFromThePaper(Role role) {
        for (Palette palette : ALL) {
            double contrast = contrast(palette.textHex(role), palette.hex(Role.PAPER));
            assertTrue(contrast >= 4.5, role + " " + palette.textHex(role) + ": " + contrast);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"CARBONATION", "PRESSURE", "TEMPERATURE", "ROOM", "LIGHT", "AGE", "READY", "LIMIT", "NOW", "GAP"})
    void linesStandOutFromThePaper(Role role) {
        for (Palette palette : ALL) {
            double contrast = contrast(palette.hex(role), palette.hex(Role.PAPER));
            assertTrue(contrast >= 3, role + " " + palette.hex(role) + ": " + contrast);
        }
    }

    @Test
    void theNowLabelStandsOutFromItsGround() {
        for (Palette palette : ALL) {
            assertTrue(contrast(palette.textHex(Role.PAPER), palette.hex(Role.NOW)) >= 4.5);
        }
    }

    /** A difference of 10 in CIE 1976 L*a*b* is plain at a glance: about four times a just noticeable one of 2.3. */
    @Test
    void dataColoursStayApartForTheColourBlind() {
        for (Palette palette : ALL) {
            for (double[][] vision : VISIONS) {
                for (int i = 0; i < DATA.size(); i++) {
                    for (int j = 0; j < i; j++) {
                        double apart = difference(
                                seen(palette.hex(DATA.get(i)), vision), seen(palette.hex(DATA.get(j)), vision));
                        assertTrue(apart >= 10, DATA.get(i) + " and " + DATA.get(j) + ": " + apart);
                    }
                }
            }
        }
    }

    private static double[] seen(String hex, double[][] vision) {
        double[] rgb = linear(hex);
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            double sum = vision[i][0] * rgb[0] + vision[i][1] * rgb[1] + vision[i][2] * rgb[2];
            seen[i] = Math.max(0, Math.min(1, sum));
        }
        return lab(seen);
    }

    /** From linear sRGB over CIE XYZ (IEC 61966-2-1) to CIE 1976 L*a*b*, white D65. */
    private static double[] lab(double[] rgb) {
        double x = root((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505);
        double y = root(luminance(rgb));
        double z = root((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.089);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double root(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double difference(double[] one, double[] other) {
        return Math.sqrt(
                Math.pow(one[0] - other[0], 2) + Math.pow(one[1] - other[1], 2) + Math.pow(one[2] - other[2], 2));
    }

    @Test
    void theStyleSheetHasBothColoursOfEveryRoleForEveryGround() {
        String css = Palette.css();
        for (Role role : Role.values()) {
            for (Palette palette : ALL) {
                assertTrue(css.contains(".r-" + role.cssName() + "{color:" + palette.hex(role) + "}"));
                assertTrue(css.contains(".t-" + role.cssName() + "{color:" + palette.textHex(role) + "}"));
            }
        }
        assertTrue(css.indexOf("prefers-color-scheme") < css.indexOf("@media print"), "print wins over dark");
    }
}
