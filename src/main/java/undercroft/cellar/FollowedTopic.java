package undercroft.cellar;

import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * A topic whose messages bring the temperatures of a place. What was received is logged like any other reading; the
 * broker and its password are settings of the user's, not of the cellar.
 *
 * @param name of the topic, such as {@code cellar/loft/temperature}
 * @param pointer where the number stands in a JSON message (RFC 6901); empty for a message that is a plain number
 * @param timePointer where the moment of measuring stands in it (ISO 8601 with an offset, or seconds or milliseconds since
 *     1970); empty where the moment of its coming is taken
 * @param unit of the number
 * @param lowestCelsius a reading below it is nonsense
 * @param highestCelsius a reading above it is nonsense
 */
public record FollowedTopic(
        String name,
        String pointer,
        String timePointer,
        TemperatureUnit unit,
        double lowestCelsius,
        double highestCelsius)
        implements SensorTopic {
    public FollowedTopic {
        name = SensorTopic.checkedName(name);
        pointer = SensorTopic.checkedPointer("pointer", pointer);
        timePointer = SensorTopic.checkedPointer("timePointer", timePointer);
        Check.within("lowestCelsius", lowestCelsius, -60, 100, "°C");
        Check.within("highestCelsius", highestCelsius, -60, 100, "°C");
        if (lowestCelsius >= highestCelsius) {
            throw new InvalidInput("lowestCelsius", "cellar.fault.lowest-above");
        }
    }

    /** One whose messages do not say when they were measured. */
    public FollowedTopic(
            String name, String pointer, TemperatureUnit unit, double lowestCelsius, double highestCelsius) {
        this(name, pointer, "", unit, lowestCelsius, highestCelsius);
    }

    @Override
    public double kept(double number) {
        return unit.celsius(number);
    }

    @Override
    public boolean isPlausible(double celsius) {
        return celsius >= lowestCelsius && celsius <= highestCelsius;
    }

    /** Whether a number that cannot be in this unit could be in degrees Fahrenheit. */
    public boolean looksFahrenheit(double number) {
        return unit != TemperatureUnit.FAHRENHEIT && isPlausible(TemperatureUnit.FAHRENHEIT.celsius(number));
    }
}
