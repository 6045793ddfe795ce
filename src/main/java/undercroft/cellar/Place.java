package undercroft.cellar;

import java.util.Optional;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;

/**
 * Somewhere bottles stand.
 *
 * @param lagHours how long the bottles take to follow the air (time constant): 2 for a single bottle, 6 to 12 for a stack
 * @param followed a logger's growing file whose new lines are taken in while the window is open
 */
public record Place(
        String id,
        String name,
        TemperatureSource temperature,
        double lagHours,
        LightSetting light,
        Optional<FollowedLog> followed)
        implements Listed {
    public Place {
        Check.id("id", id);
        name = Check.text("name", name);
        Check.within("lagHours", lagHours, 0, 120, "h");
    }

    /** A place that follows no file. */
    public Place(String id, String name, TemperatureSource temperature, double lagHours, LightSetting light) {
        this(id, name, temperature, lagHours, light, Optional.empty());
    }

    @Override
    public String label() {
        return name;
    }

    public Place withTemperature(TemperatureSource source) {
        return new Place(id, name, source, lagHours, light, followed);
    }

    public Place withFollowed(Optional<FollowedLog> log) {
        return new Place(id, name, temperature, lagHours, light, log);
    }
}
