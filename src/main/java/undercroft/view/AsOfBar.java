package undercroft.view;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import undercroft.app.TimeViewModel;
import undercroft.wording.Messages;

/** Slides the whole shelf through time, a day a step. */
final class AsOfBar extends HBox {
    private static final int WEEK = 7;

    AsOfBar(Messages messages, TimeViewModel time) {
        super(8);
        getStyleClass().add("as-of");
        setAlignment(Pos.CENTER_LEFT);
        Label name = new Label(messages.of("time.slider.label"));
        name.getStyleClass().add("faint");
        name.setMinWidth(USE_PREF_SIZE);
        Slider slider = new Slider();
        slider.setId("as-of");
        slider.setAccessibleText(messages.of("time.slider.sentence"));
        slider.minProperty().bind(time.firstDayProperty());
        slider.maxProperty().bind(time.lastDayProperty());
        slider.setBlockIncrement(1);
        slider.setMajorTickUnit(WEEK);
        slider.setMinorTickCount(WEEK - 1);
        slider.setSnapToTicks(false);
        slider.setPrefWidth(180);
        slider.setMinWidth(110);
        slider.setMaxWidth(360);
        HBox.setHgrow(slider, Priority.ALWAYS);
        HBox.setHgrow(this, Priority.ALWAYS);
        slider.setValue(time.dayProperty().get());
        slider.valueProperty()
                .addListener(
                        (property, before, after) -> time.dayProperty().set((int) Math.round(after.doubleValue())));
        time.dayProperty().addListener((property, before, after) -> {
            if (Math.round(slider.getValue()) != after.intValue()) {
                slider.setValue(after.intValue());
            }
        });
        name.setLabelFor(slider);
        Label date = new Label();
        date.setId("as-of-label");
        date.getStyleClass().add("as-of-date");
        date.textProperty().bind(time.labelProperty());
        date.setMinWidth(165);
        Button today = new Button(messages.of("time.today.button"));
        today.setId("today");
        today.setMinWidth(USE_PREF_SIZE);
        today.getStyleClass().add("quiet");
        today.setOnAction(event -> time.goToToday());
        today.disableProperty().bind(time.dayProperty().isEqualTo(0));
        getChildren().addAll(name, slider, today, date);
    }
}
