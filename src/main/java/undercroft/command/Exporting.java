package undercroft.command;

import java.util.function.Function;
import undercroft.quantity.InvalidInput;
import undercroft.store.Export;
import undercroft.store.Export.Replacing;

/** Writes for a command, which replaces files of others only when told to by {@code --force}. */
final class Exporting {
    private Exporting() {}

    static <T> T replacing(boolean force, Function<Replacing, T> export) {
        try {
            return export.apply(force ? Replacing.ANY : Replacing.OURS);
        } catch (InvalidInput fault) {
            if (Export.isForeign(fault)) {
                throw new InvalidInput(fault.where(), "command.fault.foreign");
            }
            throw fault;
        }
    }
}
