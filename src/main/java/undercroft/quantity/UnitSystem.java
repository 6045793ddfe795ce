package undercroft.quantity;

/** How quantities are written for a person: metric, or US customary. Files always hold metric. */
public enum UnitSystem {
    METRIC,
    US
}
