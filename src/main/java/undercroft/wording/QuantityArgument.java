package undercroft.wording;

import undercroft.quantity.Carbonation;
import undercroft.quantity.Gravity;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Limit;
import undercroft.quantity.Mass;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.Volume;

/** A quantity that a sentence names: to the nearest, and a {@link Limit} rounded down. */
final class QuantityArgument {
    private QuantityArgument() {}

    /** A quantity in words; anything else as it is. */
    static Object worded(Object argument, QuantityFormat format) {
        if (argument instanceof Limit limit) {
            return limit(limit.quantity(), format);
        }
        if (argument instanceof Temperature temperature) {
            return format.statedCelsius(temperature.celsius());
        }
        if (argument instanceof Pressure pressure) {
            return format.bar(pressure.bar());
        }
        if (argument instanceof Volume volume) {
            return format.litres(volume.litres());
        }
        if (argument instanceof Mass mass) {
            return format.weighed(mass.grams());
        }
        if (argument instanceof Carbonation carbonation) {
            return format.statedVolumes(carbonation.volumes());
        }
        return argument instanceof Gravity gravity ? format.gravity(gravity.specific()) : argument;
    }

    /** The same fault, the quantities that it names in words. */
    static InvalidInput worded(InvalidInput fault, QuantityFormat format) {
        Object[] said = fault.arguments().stream()
                .map(argument -> worded(argument, format))
                .toArray();
        return new InvalidInput(fault.where(), fault.key(), said);
    }

    private static String limit(Object quantity, QuantityFormat format) {
        if (quantity instanceof Temperature temperature) {
            return format.celsiusLimit(temperature.celsius());
        }
        if (quantity instanceof Pressure pressure) {
            return format.barLimit(pressure.bar());
        }
        if (quantity instanceof Carbonation carbonation) {
            return format.volumesLimit(carbonation.volumes());
        }
        throw new IllegalArgumentException("no limit is a " + quantity.getClass());
    }
}
