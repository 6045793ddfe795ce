package undercroft.cellar;

/**
 * A topic whose messages bring the pressure in a gauge bottle.
 *
 * @param unit of the number, which is the pressure above the air
 */
public record PressureTopic(String name, String pointer, PressureUnit unit) implements SensorTopic {
    /** A gauge shows as much below nothing when its zero is off, bar. */
    private static final double LOWEST_BAR = -0.5;

    /** More than any bottle bears, bar. */
    private static final double HIGHEST_BAR = 16;

    public PressureTopic {
        name = SensorTopic.checkedName(name);
        pointer = SensorTopic.checkedPointer("pointer", pointer);
    }

    @Override
    public double kept(double number) {
        return unit.bar(number);
    }

    @Override
    public boolean isPlausible(double bar) {
        return bar >= LOWEST_BAR && bar <= HIGHEST_BAR;
    }
}
