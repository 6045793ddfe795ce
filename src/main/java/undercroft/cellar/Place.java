package undercroft.cellar;

import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;

/**
 * Somewhere bottles stand.
 *
 * @param lagHours how long the bottles take to follow the air (time constant): 2 for a single bottle, 6 to 12 for a stack
 * @param followed a logger's growing file whose new lines are taken in while the window is open
 * @param topic a live sensor's messages, which go into the place's log
 * @param summerMaximumCelsius how warm it gets there on the hottest days, if the user knows it
 */
public record Place(
        String id,
        String name,
        TemperatureSource temperature,
        double lagHours,
        LightSetting light,
        Optional<FollowedLog> followed,
        Optional<FollowedTopic> topic,
        OptionalDouble summerMaximumCelsius)
        implements Listed {
    public Place {
        Check.id("id", id);
        name = Check.text("name", name);
        Check.within("lagHours", lagHours, 0, 120, "h");
        if (summerMaximumCelsius.isPresent()) {
            Check.within("summerMaximumCelsius", summerMaximumCelsius.getAsDouble(), -20, 80, "°C");
        }
    }

    /** A place that follows nothing. */
    public Place(String id, String name, TemperatureSource temperature, double lagHours, LightSetting light) {
        this(id, name, temperature, lagHours, light, Optional.empty());
    }

    /** A place without a live sensor, whose hottest day is not known. */
    public Place(
            String id,
            String name,
            TemperatureSource temperature,
            double lagHours,
            LightSetting light,
            Optional<FollowedLog> followed) {
        this(id, name, temperature, lagHours, light, followed, Optional.empty(), OptionalDouble.empty());
    }

    @Override
    public String label() {
        return name;
    }

    public Place withTemperature(TemperatureSource source) {
        return new Place(id, name, source, lagHours, light, followed, topic, summerMaximumCelsius);
    }

    public Place withFollowed(Optional<FollowedLog> log) {
        return new Place(id, name, temperature, lagHours, light, log, topic, summerMaximumCelsius);
    }

    public Place withTopic(Optional<FollowedTopic> followedTopic) {
        return new Place(id, name, temperature, lagHours, light, followed, followedTopic, summerMaximumCelsius);
    }

    public Place withSummerMaximum(OptionalDouble celsius) {
        return new Place(id, name, temperature, lagHours, light, followed, topic, celsius);
    }
}
