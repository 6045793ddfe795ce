package undercroft.view.start;

import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import undercroft.app.form.ChoiceField;

/** A few choices beside each other, one of them marked; the arrows move among them. */
final class ChipsView<T> extends FlowPane {
    ChipsView(ChoiceField<T> field) {
        super(8, 8);
        getStyleClass().add("chips");
        setId(field.id());
        setAccessibleText(field.label());
        ToggleGroup group = new ToggleGroup();
        for (T choice : field.choices()) {
            RadioButton chip = new RadioButton(field.words(choice));
            chip.getStyleClass().setAll("chip");
            chip.setToggleGroup(group);
            chip.setMinWidth(USE_PREF_SIZE);
            chip.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
            chip.setId(field.id() + "-" + String.valueOf(choice).toLowerCase(Locale.ROOT));
            chip.setSelected(choice == field.chosenProperty().get());
            chip.selectedProperty().addListener((property, before, chosen) -> {
                if (chosen) {
                    field.chosenProperty().set(choice);
                }
            });
            getChildren().add(chip);
        }
    }
}
