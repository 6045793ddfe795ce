package undercroft.plot;

import undercroft.plot.mark.Role;
import undercroft.series.Band;

/**
 * A quantity with its spread: the 90 % band behind the 50 % band behind the median. What is a forecast is
 * fainter, its median broken.
 *
 * @param label written beside the median where there is room; empty for none
 */
public record BandLayer(Band band, Role role, String label) implements Layer {}
