package undercroft;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.stage.Stage;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.store.Rescue;
import undercroft.store.Version;
import undercroft.view.RescueDialog;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** Brings back an earlier version of a cellar that cannot be read. */
record Restoring(Messages messages, Stage stage, Path folder, InvalidInput fault, Clock clock) {
    /** The versions there are, newest first. Reads a disk. */
    List<Version> read() {
        return Rescue.of(folder).versions();
    }

    /** Asks which one; empty when all is to stay as it is. */
    Optional<Version> choose(List<Version> versions, boolean dark) {
        QuantityFormat words = QuantityFormat.of(messages, UnitSystem.METRIC, ZoneId.systemDefault());
        List<String> labels = versions.stream()
                .map(version -> messages.of("rescue.version.text", words.dayAndTime(version.until())))
                .toList();
        return RescueDialog.ask(messages, stage, messages.fault(fault), labels, dark)
                .map(versions::get);
    }

    /** Puts it in the place of the file that cannot be read, which is kept. Writes to a disk. */
    Cellar restore(Version version) {
        return Rescue.of(folder).restore(version, clock);
    }
}
