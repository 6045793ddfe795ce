package undercroft.outlook;

import java.time.Instant;
import java.util.Optional;

/**
 * When the lot is carbonated to 95 % and has cleaned up.
 *
 * @param early 5 %, {@code median} 50 %, {@code late} 95 %; empty when not within the horizon where it stands
 * @param probabilityNow that it is ready at the outlook's instant
 */
public record ReadyOutlook(
        Optional<Instant> early, Optional<Instant> median, Optional<Instant> late, double probabilityNow) {}
