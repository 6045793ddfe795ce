package undercroft.view.help;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination.ModifierValue;
import undercroft.app.help.HelpBlock;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Keys;
import undercroft.wording.Messages;

/** The keys in words, as the keyboard of the language has them printed on. */
record KeyWords(Messages messages) {
    /** Every key that is bound, field by field. */
    List<HelpBlock> blocks() {
        List<HelpBlock> blocks = new ArrayList<>();
        blocks.add(new HelpBlock.Paragraph(messages.of("help.keys.text")));
        for (Shortcut.Field field : Shortcut.Field.values()) {
            blocks.add(new HelpBlock.Heading(messages.of(Keys.of("help.field", field))));
            blocks.add(new HelpBlock.Table(
                    List.of(messages.of("help.keys.keys"), messages.of("help.keys.what")),
                    Shortcut.in(field).stream()
                            .map(each -> List.of(keys(each), messages.of(Keys.of("help.does", each))))
                            .toList()));
        }
        return blocks;
    }

    private String keys(Shortcut shortcut) {
        return shortcut.keys().stream()
                .map(this::words)
                .distinct()
                .reduce((first, next) -> messages.of("help.keys.or", first, next))
                .orElse("");
    }

    private String words(KeyCodeCombination key) {
        String words = name(key.getCode());
        if (key.getShift() == ModifierValue.DOWN) {
            words = messages.of("help.keys.with", messages.of("help.key.shift"), words);
        }
        return key.getShortcut() == ModifierValue.DOWN
                ? messages.of("help.keys.with", messages.of("help.key.shortcut"), words)
                : words;
    }

    private String name(KeyCode code) {
        return switch (code) {
            case PLUS, EQUALS, ADD -> "+";
            case MINUS, SUBTRACT -> "−";
            default -> {
                String key = Keys.of("help.key", code);
                yield messages.has(key) ? messages.of(key) : code.getName();
            }
        };
    }
}
