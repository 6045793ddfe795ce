package undercroft.view.kit.keys;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyCombination.ModifierValue;
import javafx.scene.input.KeyEvent;

/**
 * Every key that does something beyond what a control does by itself. The handlers ask here, and the help shows what
 * stands here, so that the list in the help is the list that holds.
 */
public enum Shortcut {
    HELP(Field.EVERYWHERE, plain(KeyCode.F1)),
    UNDO(Field.EVERYWHERE, control(KeyCode.Z)),
    REDO(Field.EVERYWHERE, control(KeyCode.Y), controlShift(KeyCode.Z)),

    FIND(Field.SHELF, control(KeyCode.F)),
    NEXT_BATCH(Field.SHELF, control(KeyCode.PAGE_DOWN)),
    PREVIOUS_BATCH(Field.SHELF, control(KeyCode.PAGE_UP)),
    LEAVE(Field.SHELF, plain(KeyCode.ESCAPE)),
    OPEN_PLACE(Field.PLACE, plain(KeyCode.ENTER), plain(KeyCode.SPACE)),

    CRATE_BEFORE(Field.CRATES, plain(KeyCode.UP)),
    CRATE_AFTER(Field.CRATES, plain(KeyCode.DOWN)),
    PLACE_BEFORE(Field.CRATES, plain(KeyCode.PAGE_UP)),
    PLACE_AFTER(Field.CRATES, plain(KeyCode.PAGE_DOWN)),
    FIRST_CRATE(Field.CRATES, plain(KeyCode.HOME)),
    LAST_CRATE(Field.CRATES, plain(KeyCode.END)),
    DAY_BEFORE(Field.CRATES, plain(KeyCode.LEFT)),
    DAY_AFTER(Field.CRATES, plain(KeyCode.RIGHT)),
    LESS_OF_THE_SEASON(Field.CRATES, anyShift(KeyCode.PLUS), anyShift(KeyCode.EQUALS), plain(KeyCode.ADD)),
    MORE_OF_THE_SEASON(Field.CRATES, anyShift(KeyCode.MINUS), plain(KeyCode.SUBTRACT)),
    MARK(Field.CRATES, plain(KeyCode.SPACE)),
    UNMARK_ALL(Field.CRATES, plain(KeyCode.ESCAPE)),
    OPEN_BATCH(Field.CRATES, plain(KeyCode.ENTER)),

    CLOSER(Field.PLOTS, anyShift(KeyCode.PLUS), anyShift(KeyCode.EQUALS), plain(KeyCode.ADD)),
    WIDER(Field.PLOTS, anyShift(KeyCode.MINUS), plain(KeyCode.SUBTRACT)),
    EARLIER(Field.PLOTS, plain(KeyCode.LEFT)),
    LATER(Field.PLOTS, plain(KeyCode.RIGHT)),
    CURSOR_EARLIER(Field.PLOTS, shift(KeyCode.LEFT)),
    CURSOR_LATER(Field.PLOTS, shift(KeyCode.RIGHT)),
    WHOLE_TIME(Field.PLOTS, plain(KeyCode.HOME)),
    NO_CURSOR(Field.PLOTS, plain(KeyCode.ESCAPE)),

    SPELL_EARLIER(Field.SPELLS, plain(KeyCode.LEFT)),
    SPELL_LATER(Field.SPELLS, plain(KeyCode.RIGHT)),
    SPELL_ABOVE(Field.SPELLS, plain(KeyCode.UP)),
    SPELL_BELOW(Field.SPELLS, plain(KeyCode.DOWN)),
    OPEN_SPELL(Field.SPELLS, plain(KeyCode.ENTER)),

    LIST_BEFORE(Field.LISTS, plain(KeyCode.LEFT)),
    LIST_AFTER(Field.LISTS, plain(KeyCode.RIGHT)),

    TICK(Field.CHECKLIST, plain(KeyCode.ENTER), plain(KeyCode.SPACE)),
    STEP_BEFORE(Field.CHECKLIST, plain(KeyCode.UP)),
    STEP_AFTER(Field.CHECKLIST, plain(KeyCode.DOWN)),

    CONFIRM(Field.FORMS, control(KeyCode.ENTER)),
    DATE_UP(Field.FORMS, plain(KeyCode.UP)),
    DATE_DOWN(Field.FORMS, plain(KeyCode.DOWN)),
    CLOSE(Field.FORMS, plain(KeyCode.ESCAPE));

    private final Field field;
    private final List<KeyCodeCombination> keys;

    Shortcut(Field field, KeyCodeCombination... keys) {
        this.field = field;
        this.keys = List.of(keys);
    }

    /** Where the keys are listened to. */
    public enum Field {
        EVERYWHERE,
        SHELF,
        PLACE,
        CRATES,
        PLOTS,
        SPELLS,
        LISTS,
        CHECKLIST,
        FORMS
    }

    public Field field() {
        return field;
    }

    /** Each of these does it; the first is the usual one. */
    public List<KeyCodeCombination> keys() {
        return keys;
    }

    /** Whether it was just pressed. */
    public boolean matches(KeyEvent event) {
        return keys.stream().anyMatch(key -> key.match(event));
    }

    /** What was pressed where; empty where the keys mean nothing there. */
    public static Optional<Shortcut> of(Field field, KeyEvent event) {
        return Arrays.stream(values())
                .filter(each -> each.field == field && each.matches(event))
                .findFirst();
    }

    /** All that hold in a field, in the order they are told in. */
    public static List<Shortcut> in(Field field) {
        return EnumSet.allOf(Shortcut.class).stream()
                .filter(each -> each.field == field)
                .toList();
    }

    private static KeyCodeCombination plain(KeyCode code) {
        return new KeyCodeCombination(code);
    }

    private static KeyCodeCombination shift(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHIFT_DOWN);
    }

    /** On many keyboards the plus needs the shift key, on others not. */
    private static KeyCodeCombination anyShift(KeyCode code) {
        return new KeyCodeCombination(
                code, ModifierValue.ANY, ModifierValue.UP, ModifierValue.UP, ModifierValue.UP, ModifierValue.UP);
    }

    private static KeyCodeCombination control(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    private static KeyCodeCombination controlShift(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    }
}
