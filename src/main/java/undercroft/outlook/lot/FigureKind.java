package undercroft.outlook.lot;

/** The figures of a lot that a person looks at first; each has its grounds. */
public enum FigureKind {
    CARBONATION,
    PRESSURE,
    HEAT_LIMIT,
    LIGHT,
    BEST_BEFORE,
    READY
}
