package undercroft.app.help;

/** The chapters of the guide, in the order in which a new user needs them. */
enum GuideTopic {
    BEGIN,
    PLACES,
    BOTTLING,
    SHELF,
    BATCH,
    DANGER,
    SPELLS,
    SERVINGS,
    KEEPING
}
