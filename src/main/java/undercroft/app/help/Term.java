package undercroft.app.help;

/** The words of the glossary. */
enum Term {
    BATCH,
    LOT,
    PLACE,
    VOLUMES,
    RESIDUAL,
    PRIMING,
    CONDITIONING,
    LAG,
    GRAVITY,
    ATTENUATION,
    HEADSPACE,
    GAUGE,
    WORKING,
    STRONGEST,
    HEAT,
    LOAD,
    RANGE,
    READY,
    BEST,
    KINETIC,
    SPELL,
    READING,
    SERVING,
    WHATIF,
    STRUCK
}
