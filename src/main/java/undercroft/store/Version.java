package undercroft.store;

import java.nio.file.Path;
import java.time.Instant;

/** An earlier state of a cellar: until when it was the newest, and the file that holds it. */
public record Version(Instant until, Path file) {}
