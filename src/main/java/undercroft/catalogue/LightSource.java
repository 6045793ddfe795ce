package undercroft.catalogue;

/** Spectral kinds of light, CIE and ASTM names; the power distributions stand with the light calculation. */
public enum LightSource implements Listed {
    SUN("sun"),
    OVERCAST("overcast"),
    WINDOW("window"),
    BLUE_SKY("blue-sky"),
    FLUORESCENT_COOL("fluorescent-cool"),
    FLUORESCENT_TRIPHOSPHOR("fluorescent"),
    LED_WARM("led-warm"),
    LED_NEUTRAL("led"),
    INCANDESCENT("incandescent");

    private final String id;

    LightSource(String id) {
        this.id = id;
    }

    /** True for the sun and the sky, which rise and set; false for lamps. */
    public boolean isDaylight() {
        return this == SUN || this == OVERCAST || this == WINDOW || this == BLUE_SKY;
    }

    @Override
    public String id() {
        return id;
    }
}
