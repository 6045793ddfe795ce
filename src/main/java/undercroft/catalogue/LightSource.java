package undercroft.catalogue;

/** Spectral kinds of light, CIE and ASTM names; the power distributions stand with the light calculation. */
public enum LightSource implements Listed {
    SUN("sun", "direct sun (ASTM G173)"),
    OVERCAST("overcast", "overcast daylight (CIE D65)"),
    WINDOW("window", "daylight behind a pane (CIE ID65)"),
    BLUE_SKY("blue-sky", "shade under blue sky (CIE D, 10 000 K)"),
    FLUORESCENT_COOL("fluorescent-cool", "cool-white fluorescent (CIE FL2)"),
    FLUORESCENT_TRIPHOSPHOR("fluorescent", "triphosphor fluorescent (CIE FL11)"),
    LED_WARM("led-warm", "warm LED (CIE LED-B2)"),
    LED_NEUTRAL("led", "neutral LED (CIE LED-B3)"),
    INCANDESCENT("incandescent", "incandescent lamp (CIE A)");

    private final String id;
    private final String label;

    LightSource(String id, String label) {
        this.id = id;
        this.label = label;
    }

    /** True for the sun and the sky, which rise and set; false for lamps. */
    public boolean isDaylight() {
        return this == SUN || this == OVERCAST || this == WINDOW || this == BLUE_SKY;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }
}
