package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import undercroft.wording.Messages;

/** Every command, option and parameter is explained, and no explanation is left over. */
final class UsageTest {
    private static final String ROOT = "undercroft";

    @TempDir
    private Path scratch;

    private CommandLine line() {
        return Commands.line(Terminal.console(scratch));
    }

    @Test
    void everyCommandAndOptionIsExplained() {
        Set<String> silent = new TreeSet<>();
        line().getSubcommands().forEach((name, command) -> {
            CommandSpec spec = command.getCommandSpec();
            if (spec.usageMessage().description().length == 0) {
                silent.add(name);
            }
            for (ArgSpec one : spec.args()) {
                if (one.description().length == 0) {
                    silent.add(name + " " + one.paramLabel());
                }
            }
        });
        assertEquals(Set.of(), silent, "add these to usage.properties");
    }

    @Test
    void everyExplanationBelongsToSomething() {
        Set<String> known = new TreeSet<>();
        line().getSubcommands().forEach((name, command) -> {
            known.add(ROOT + "." + name + ".usage.description");
            command.getCommandSpec().args().forEach(one -> {
                String own = one.isOption()
                        ? ((CommandLine.Model.OptionSpec) one).longestName().replaceFirst("^-+", "")
                        : one.paramLabel();
                known.add(own);
                known.add(ROOT + "." + name + "." + own);
            });
        });
        Set<String> left = Messages.english().bundle("usage").keySet().stream()
                .filter(key -> !key.startsWith(ROOT + ".usage."))
                .collect(Collectors.toCollection(TreeSet::new));
        left.removeAll(known);
        assertEquals(Set.of(), left, "take these out of usage.properties");
    }
}
