package undercroft.session.change;

import undercroft.cellar.Cellar;

/** Something done to a cellar. Pure; checked before anything changes. */
@FunctionalInterface
public interface CellarChange {
    /**
     * The cellar as it is afterwards.
     *
     * @throws undercroft.quantity.InvalidInput when it cannot be, naming the part that is at fault
     */
    Cellar applyTo(Cellar cellar);
}
