package undercroft.view.start;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.start.FirstCellarForm;
import undercroft.wording.Messages;

/** The shelf as the answers make it. */
final class PreviewView extends VBox {
    private final Label place = new Label();
    private final Label climate = new Label();

    PreviewView(Messages messages) {
        getStyleClass().add("start-preview");
        setId("start-preview");
        Label title = new Label(messages.of("start.preview.title"));
        title.getStyleClass().add("faint");
        place.getStyleClass().add("start-strong");
        place.setId("start-preview-place");
        climate.setMinWidth(USE_PREF_SIZE);
        climate.setId("start-preview-climate");
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        HBox heading = new HBox(8, place, between, climate);
        heading.getStyleClass().add("start-place");
        Label crate = new Label(messages.of("start.preview.crate"));
        crate.getStyleClass().add("start-crate");
        Label next = new Label(messages.of("start.preview.next"));
        next.getStyleClass().add("faint");
        next.setWrapText(true);
        next.setMinHeight(USE_PREF_SIZE);
        HBox.setHgrow(next, Priority.ALWAYS);
        crate.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(title, heading, new HBox(16, crate, next));
    }

    void show(FirstCellarForm form) {
        place.setText(form.placeWords());
        climate.setText(form.climateWords());
    }
}
