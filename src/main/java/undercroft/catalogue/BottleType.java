package undercroft.catalogue;

import java.util.OptionalDouble;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * A make of bottle.
 *
 * @param fillMillilitres beer in it, at 20 °C
 * @param brimfulMillilitres what it holds to the brim, at 20 °C; more than the fill
 * @param wallMillimetres thickness of the body
 * @param emptyGrams weight empty
 * @param bodyMillimetres outer diameter of the body
 * @param makerTestBar the maker's own 60-second test pressure, bar gauge, where the user has it
 */
public record BottleType(
        String id,
        String label,
        GlassColour colour,
        BottleClass bottleClass,
        Closure closure,
        double fillMillilitres,
        double brimfulMillilitres,
        double wallMillimetres,
        double emptyGrams,
        double bodyMillimetres,
        OptionalDouble makerTestBar)
        implements Listed {
    public BottleType {
        Check.id("id", id);
        label = Check.text("name", label);
        Check.within("fillMillilitres", fillMillilitres, 50, 10_000, "mL");
        Check.within("brimfulMillilitres", brimfulMillilitres, 50, 11_000, "mL");
        if (brimfulMillilitres <= fillMillilitres) {
            throw new InvalidInput("brimfulMillilitres", "cellar.fault.no-headspace");
        }
        Check.within("wallMillimetres", wallMillimetres, 0.1, 10, "mm");
        Check.within("emptyGrams", emptyGrams, 5, 5_000, "g");
        Check.within("bodyMillimetres", bodyMillimetres, 30, 250, "mm");
        if (makerTestBar.isPresent()) {
            Check.within("makerTestBar", makerTestBar.getAsDouble(), 0.5, 40, "bar");
        }
    }

    public double headspaceMillilitres() {
        return brimfulMillilitres - fillMillilitres;
    }

    /**
     * This make as it is used: in another colour, with another fill, or worn. Worn bottles are trusted one class down,
     * {@link BottleClass#worn}, and so is a maker's figure.
     */
    public BottleType asUsed(GlassColour usedColour, double usedFillMillilitres, boolean scuffed) {
        return new BottleType(
                id,
                label,
                usedColour,
                scuffed ? bottleClass.worn() : bottleClass,
                closure,
                usedFillMillilitres,
                brimfulMillilitres,
                wallMillimetres,
                emptyGrams,
                bodyMillimetres,
                makerTestBar);
    }

    /** True for glass, which weakens with time under load; plastic creeps instead. */
    public boolean isGlass() {
        return !bottleClass.isPlastic();
    }
}
