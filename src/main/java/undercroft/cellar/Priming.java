package undercroft.cellar;

import java.util.List;
import java.util.OptionalDouble;
import undercroft.quantity.Check;

/**
 * How the batch was primed.
 *
 * @param beerLitres beer that the sugar went into
 * @param doses the sugars, together
 * @param targetVolumes what was aimed at, volumes of CO2, if anything was
 * @param perBottle true when each bottle was dosed by itself
 */
public record Priming(double beerLitres, List<SugarDose> doses, OptionalDouble targetVolumes, boolean perBottle) {
    public Priming {
        Check.within("beerLitres", beerLitres, 0.1, 2_000, "L");
        doses = List.copyOf(doses);
        if (targetVolumes.isPresent()) {
            Check.within("targetVolumes", targetVolumes.getAsDouble(), 0, 8, "volumes");
        }
    }
}
