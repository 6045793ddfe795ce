package undercroft.cellar;

import undercroft.catalogue.Listed;
import undercroft.quantity.Check;

/**
 * Somewhere bottles stand.
 *
 * @param lagHours how long the bottles take to follow the air (time constant): 2 for a single bottle, 6 to 12 for a stack
 */
public record Place(String id, String name, TemperatureSource temperature, double lagHours, LightSetting light)
        implements Listed {
    public Place {
        Check.id("id", id);
        name = Check.text("name", name);
        Check.within("lagHours", lagHours, 0, 120, "h");
    }

    @Override
    public String label() {
        return name;
    }

    public Place withTemperature(TemperatureSource source) {
        return new Place(id, name, source, lagHours, light);
    }
}
