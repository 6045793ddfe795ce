package undercroft.cellar;

import java.time.Instant;
import undercroft.catalogue.Cover;

/** From an instant on, a lot stands in a place under a cover, until its next stay begins. */
public record Stay(String placeId, Instant from, Cover cover) {}
