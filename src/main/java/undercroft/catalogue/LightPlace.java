package undercroft.catalogue;

/**
 * Where light falls on bottles: a spectral kind, an illuminance and hours a day to start from. Illuminances: CIBSE
 * interior lighting code and EN 12464-1 values as far as they could be read in summaries; hours: common practice, no
 * source. All three may be set by the user.
 */
public enum LightPlace implements Listed {
    DARK("dark", LightSource.LED_NEUTRAL, 0, 0),
    DIM_CELLAR("dim-cellar", LightSource.INCANDESCENT, 30, 0.5),
    LIT_CELLAR("lit-cellar", LightSource.FLUORESCENT_COOL, 100, 1),
    ROOM_EVENING("room-evening", LightSource.LED_WARM, 100, 5),
    ROOM_DAY("room-day", LightSource.WINDOW, 300, 8),
    WINDOW_SHADE("window-shade", LightSource.WINDOW, 2_000, 8),
    WINDOW_SUN("window-sun", LightSource.WINDOW, 50_000, 3),
    SHOP_FLUORESCENT("shop-fluorescent", LightSource.FLUORESCENT_TRIPHOSPHOR, 750, 12),
    SHOP_LED("shop-led", LightSource.LED_NEUTRAL, 1_000, 12),
    OVERCAST("overcast", LightSource.OVERCAST, 5_000, 8),
    OPEN_SHADE("open-shade", LightSource.BLUE_SKY, 10_000, 8),
    DIRECT_SUN("direct-sun", LightSource.SUN, 109_500, 6);

    private final String id;
    private final LightSource source;
    private final double lux;
    private final double hoursPerDay;

    LightPlace(String id, LightSource source, double lux, double hoursPerDay) {
        this.id = id;
        this.source = source;
        this.lux = lux;
        this.hoursPerDay = hoursPerDay;
    }

    @Override
    public String id() {
        return id;
    }

    public LightSource source() {
        return source;
    }

    /** Usual illuminance on the bottles, lx. */
    public double lux() {
        return lux;
    }

    /** Usual hours of light a day. */
    public double hoursPerDay() {
        return hoursPerDay;
    }
}
