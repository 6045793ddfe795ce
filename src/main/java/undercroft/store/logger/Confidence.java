package undercroft.store.logger;

/** How sure a guess about a file is. */
public enum Confidence {
    /** The file says so. */
    STATED,
    /** The figures speak for it; no need to ask. */
    LIKELY,
    /** A person should be asked. */
    ASK
}
