package undercroft.command;

import picocli.CommandLine.IVersionProvider;

/** The version as the jar's manifest has it. */
final class ProgramVersion implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = ProgramVersion.class.getPackage().getImplementationVersion();
        return new String[] {"Undercroft " + (version == null ? "(unpackaged)" : version)};
    }
}
