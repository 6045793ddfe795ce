package undercroft.calc.light;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import undercroft.catalogue.LightSource;

/** Spectral irradiance of each kind of light for one lux of it. */
final class Illumination {
    private static final SpectralTable SMOOTH = SpectralTable.read("sources_10nm.csv");
    private static final SpectralTable LINES = SpectralTable.read("fluorescent_5nm.csv");
    private static final double BLUE_SKY_KELVIN = 10_000;
    private static final Map<LightSource, DoubleUnaryOperator> PER_LUX = perLux();

    private Illumination() {}

    /** W m⁻² nm⁻¹ of a source at one lux, 300 to 560 nm; zero where its table does not reach. */
    static DoubleUnaryOperator perLux(LightSource source) {
        return PER_LUX.get(source);
    }

    private static Map<LightSource, DoubleUnaryOperator> perLux() {
        Map<LightSource, DoubleUnaryOperator> all = new EnumMap<>(LightSource.class);
        for (LightSource source : LightSource.values()) {
            all.put(
                    source,
                    switch (source) {
                        case SUN -> tabulated("G173");
                        case OVERCAST -> tabulated("D65");
                        case WINDOW -> tabulated("ID65");
                        case LED_WARM -> tabulated("LED-B2");
                        case LED_NEUTRAL -> tabulated("LED-B3");
                        case FLUORESCENT_COOL -> scaled(LINES.column("FL2")::at);
                        case FLUORESCENT_TRIPHOSPHOR -> scaled(LINES.column("FL11")::at);
                        case BLUE_SKY -> scaled(Daylight.ofColourTemperature(BLUE_SKY_KELVIN));
                        case INCANDESCENT -> scaled(Daylight::incandescent);
                    });
        }
        return all;
    }

    private static DoubleUnaryOperator tabulated(String column) {
        Spectrum spectrum = SMOOTH.column(column);
        double lux = SMOOTH.lux(column);
        return nm -> spectrum.at(nm) / lux;
    }

    private static DoubleUnaryOperator scaled(DoubleUnaryOperator relative) {
        double lux = Luminosity.lux(relative);
        return nm -> relative.applyAsDouble(nm) / lux;
    }
}
