package undercroft.view.spells;

import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import undercroft.view.kit.SavedFiles;
import undercroft.wording.Messages;

/** Saves what stands above it as a table. */
final class TableButton {
    private TableButton() {}

    static Button of(String id, Messages messages, SavedFiles files, String suggestedName, Supplier<String> table) {
        Button save = new Button(messages.of("spells.table.save"));
        save.setId(id);
        save.getStyleClass().add("quiet");
        save.setOnAction(event -> files.save(
                save.getScene().getWindow(),
                suggestedName,
                "csv",
                () -> table.get().getBytes(StandardCharsets.UTF_8)));
        return save;
    }
}
