package undercroft.view.kit.form;

import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;
import undercroft.app.form.BooleanField;
import undercroft.app.form.ChoiceField;
import undercroft.app.form.DateField;
import undercroft.app.form.DateTimeField;
import undercroft.app.form.Field;
import undercroft.app.form.MonthDayField;
import undercroft.app.form.NumberField;
import undercroft.app.form.WordsField;
import undercroft.view.kit.keys.Shortcut;

/** The control for a field, bound to it. */
public final class FieldControls {
    static final double NUMBER_WIDTH = 120;

    private FieldControls() {}

    /** The control a person works on carries the field's id. */
    public static Node of(Field<?> field) {
        Node node = made(field);
        if (!(node instanceof DateTimeControl)) {
            ready(node, field);
        }
        return node;
    }

    private static Node made(Field<?> field) {
        if (field instanceof WordsField words) {
            if (words.isHidden()) {
                PasswordField hidden = new PasswordField();
                hidden.textProperty().bindBidirectional(words.textProperty());
                return hidden;
            }
            return words.hasLines() ? lines(words) : text(words.textProperty());
        }
        if (field instanceof NumberField number) {
            TextField text = text(number.textProperty());
            text.setMaxWidth(NUMBER_WIDTH);
            return text;
        }
        if (field instanceof MonthDayField day) {
            TextField text = text(day.textProperty());
            text.setMaxWidth(NUMBER_WIDTH);
            return text;
        }
        if (field instanceof DateField date) {
            return date(date);
        }
        if (field instanceof ChoiceField<?> choice) {
            return combo(choice);
        }
        if (field instanceof BooleanField tick) {
            CheckBox box = new CheckBox(tick.name());
            box.setWrapText(true);
            box.setMinHeight(Region.USE_PREF_SIZE);
            box.selectedProperty().bindBidirectional(tick.tickedProperty());
            return box;
        }
        return new DateTimeControl(field.messages(), (DateTimeField) field);
    }

    /** Gives a control its name and lets its field know when it is left. */
    static void ready(Node node, Field<?> field) {
        node.setId(field.id());
        node.setAccessibleText(field.label());
        node.focusedProperty().addListener((property, before, focused) -> {
            if (!focused) {
                field.leave();
            }
        });
        field.faultProperty().addListener((property, before, sentence) -> mark(node, field, sentence));
        mark(node, field, field.faultProperty().get());
    }

    private static void mark(Node node, Field<?> field, String sentence) {
        node.getStyleClass().remove("faulty");
        if (!sentence.isEmpty()) {
            node.getStyleClass().add("faulty");
        }
        node.setAccessibleHelp(sentence.isEmpty() ? field.hintProperty().get() : sentence);
    }

    static TextField text(StringProperty property) {
        TextField text = new TextField();
        text.textProperty().bindBidirectional(property);
        return text;
    }

    private static TextField date(DateField date) {
        TextField text = text(date.textProperty());
        text.setMaxWidth(NUMBER_WIDTH);
        text.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (Shortcut.DATE_UP.matches(event) || Shortcut.DATE_DOWN.matches(event)) {
                date.stepDays(Shortcut.DATE_UP.matches(event) ? 1 : -1);
                event.consume();
            }
        });
        return text;
    }

    private static TextArea lines(WordsField words) {
        TextArea area = new TextArea();
        area.setWrapText(true);
        area.setPrefRowCount(10);
        area.textProperty().bindBidirectional(words.textProperty());
        return area;
    }

    private static <T> ComboBox<T> combo(ChoiceField<T> choice) {
        ComboBox<T> combo = new ComboBox<>();
        combo.getItems().setAll(List.copyOf(choice.choices()));
        combo.setConverter(new Words<>(choice));
        combo.setMaxWidth(Double.MAX_VALUE);
        combo.valueProperty().bindBidirectional(choice.chosenProperty());
        Tooltip whole = new Tooltip();
        whole.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> said(combo), combo.valueProperty(), combo.converterProperty()));
        combo.setTooltip(whole);
        return combo;
    }

    /** In full what a narrow box may cut off. */
    private static <T> String said(ComboBox<T> combo) {
        return combo.getValue() == null ? "" : combo.getConverter().toString(combo.getValue());
    }

    private static final class Words<T> extends StringConverter<T> {
        private final ChoiceField<T> choice;

        Words(ChoiceField<T> choice) {
            this.choice = choice;
        }

        @Override
        public String toString(T value) {
            return choice.words(value);
        }

        @Override
        public T fromString(String words) {
            return choice.choices().stream()
                    .filter(each -> choice.words(each).equals(words))
                    .findFirst()
                    .orElse(null);
        }
    }
}
