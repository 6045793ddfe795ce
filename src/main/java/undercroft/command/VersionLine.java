package undercroft.command;

import picocli.CommandLine.IVersionProvider;
import undercroft.report.ProgramVersion;

/** What {@code --version} prints. */
final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"Undercroft " + ProgramVersion.number().orElse("(unpackaged)")};
    }
}
