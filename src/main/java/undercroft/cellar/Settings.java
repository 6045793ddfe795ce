package undercroft.cellar;

import undercroft.quantity.Check;
import undercroft.quantity.UnitSystem;

/** What holds for the whole cellar. */
public record Settings(UnitSystem units, double altitudeMetres) {
    public static final Settings USUAL = new Settings(UnitSystem.METRIC, 0);

    public Settings {
        Check.within("altitudeMetres", altitudeMetres, -400, 5_000, "m");
    }
}
