package undercroft.outlook;

import undercroft.cellar.Place;

/** A place at an instant; {@code trendKelvin} is the change of its day's mean over three days. */
public record PlaceOutlook(Place place, double nowCelsius, double trendKelvin, boolean measured) {}
