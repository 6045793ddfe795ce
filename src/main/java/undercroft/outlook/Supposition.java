package undercroft.outlook;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;
import undercroft.series.Span;

/** Something that might happen to the shelf. Supposing it changes nothing. */
public sealed interface Supposition {
    /** The air of a place so much warmer (or, below zero, colder) for some days. */
    record Warmer(String placeId, double kelvin, Instant from, double days) implements Supposition {
        public Warmer {
            Check.within("kelvin", kelvin, -40, 40, "K");
            Check.within("days", days, 0.1, 365, "d");
        }
    }

    /** The cooling of a place fails: its air goes to that of the room about it, and stays there. */
    record CoolingFails(String placeId, Instant from, double roomCelsius) implements Supposition {
        public CoolingFails {
            Check.within("roomCelsius", roomCelsius, -20, 60, "°C");
        }
    }

    /** All bottles that are left of a lot go to another place now. */
    record Moved(String batchId, String lotId, String placeId) implements Supposition {}

    /** A spell that was, once more, from an instant on: as far off the usual as then, hour by hour. */
    record Again(String placeId, Span spell, Instant from) implements Supposition {}

    /** Days as a weather service tells them, for the air of a place; before and after them it is as it would be. */
    record Forecast(String placeId, List<DayAhead> days) implements Supposition {
        public Forecast {
            days = List.copyOf(days);
            if (days.isEmpty()) {
                throw new InvalidInput("days", "whatif.fault.no-day");
            }
            for (int i = 1; i < days.size(); i++) {
                if (!days.get(i).date().isAfter(days.get(i - 1).date())) {
                    throw new InvalidInput("days[" + i + "]", "whatif.fault.not-after");
                }
            }
        }
    }

    /** A day's lowest and highest temperature, °C. */
    record DayAhead(LocalDate date, double lowCelsius, double highCelsius) {
        public DayAhead {
            Check.within("lowCelsius", lowCelsius, -40, 60, "°C");
            Check.within("highCelsius", highCelsius, lowCelsius, 60, "°C");
        }
    }
}
