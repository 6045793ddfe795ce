package undercroft.report;

import java.util.Optional;

/** The version as the jar's manifest has it. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /** Such as {@code 0.1.0}; empty where the program runs from its sources. */
    public static Optional<String> number() {
        return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion());
    }
}
