package undercroft.outlook;

import java.time.Instant;
import java.util.Optional;
import undercroft.cellar.Pour;

/**
 * When the bottles of a pour go into the cold.
 *
 * @param chillFrom when to put them in; empty when it cannot be done in time
 * @param takeOut when to take them out, at or before the pour
 */
public record PourPlan(Pour pour, Optional<Instant> chillFrom, Instant takeOut, boolean readyByThen, String why) {}
