package undercroft.view.kit.form;

import javafx.geometry.Pos;
import javafx.scene.control.DatePicker;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import undercroft.app.form.DateTimeField;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Messages;

/** Date and time of day as text, the date also from a calendar. */
final class DateTimeControl extends HBox {
    private static final double DATE_WIDTH = 150;
    private static final double TIME_WIDTH = 72;
    private static final double CALENDAR_BUTTON_WIDTH = 34;

    DateTimeControl(Messages messages, DateTimeField field) {
        super(6);
        setAlignment(Pos.CENTER_LEFT);
        TextField date = FieldControls.text(field.dateProperty());
        date.setPrefWidth(DATE_WIDTH);
        FieldControls.ready(date, field);
        date.setAccessibleText(messages.of("words.list.joint", field.name(), messages.of("form.moment.date")));
        date.setAccessibleHelp(messages.of("form.moment.hint"));
        date.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (Shortcut.DATE_UP.matches(event) || Shortcut.DATE_DOWN.matches(event)) {
                field.stepDays(Shortcut.DATE_UP.matches(event) ? 1 : -1);
                event.consume();
            }
        });
        TextField time = FieldControls.text(field.timeProperty());
        time.setPrefWidth(TIME_WIDTH);
        FieldControls.ready(time, field);
        time.setId(field.id() + "-time");
        time.setAccessibleText(messages.of("words.list.joint", field.name(), messages.of("form.moment.time")));
        getChildren().addAll(date, calendar(field), time);
    }

    /** Only the button of a date picker: the date itself is typed in the field before it. */
    private static StackPane calendar(DateTimeField field) {
        DatePicker picker = new DatePicker(field.dateOrInitial());
        picker.getStyleClass().add("calendar-button");
        picker.setFocusTraversable(false);
        picker.getEditor().setFocusTraversable(false);
        picker.setMinWidth(CALENDAR_BUTTON_WIDTH);
        picker.setMaxWidth(CALENDAR_BUTTON_WIDTH);
        picker.setOnShowing(event -> picker.setValue(field.dateOrInitial()));
        picker.setOnHidden(event -> {
            if (picker.getValue() != null && !picker.getValue().equals(field.dateOrInitial())) {
                field.setDate(picker.getValue());
            }
        });
        return new StackPane(picker);
    }
}
